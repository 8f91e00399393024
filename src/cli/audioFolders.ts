import { audioFolderUnclear } from "../messages/publish.ts";
import { UserError } from "../messages/userError.ts";
import type { AudioFolders } from "../publish/clips.ts";

/** Folders of recordings by dataset id, from texts like `demo=data/demo`. Throws a UserError on any other form. */
export function audioFolders(texts: readonly string[]): AudioFolders {
  return Object.fromEntries(
    texts.map((text) => {
      const found = /^([a-z0-9-]+)=(.+)$/.exec(text);
      if (found === null) throw new UserError(audioFolderUnclear(text));
      return [found[1]!, found[2]!];
    }),
  );
}
