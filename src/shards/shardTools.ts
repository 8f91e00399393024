import type { ConfinedFiles } from "../storage/confinedFiles.ts";
import type { ContentCache } from "../storage/contentCache.ts";
import type { ScratchFiles } from "../storage/scratchFile.ts";

/** What work on a shard has at hand. */
export interface ShardTools {
  readonly cache: ContentCache;
  readonly files: ConfinedFiles;
  /** Called between utterances; may throw to stop. */
  readonly pause: () => Promise<void>;
  /** For decoded recordings that another stage will want; null when it may run elsewhere. */
  readonly scratch: ScratchFiles | null;
}
