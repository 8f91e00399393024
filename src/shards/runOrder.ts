import { UserError } from "../messages/userError.ts";
import { ConfinedFiles, FileChanged } from "../storage/confinedFiles.ts";
import { ContentCache } from "../storage/contentCache.ts";
import { ScratchFiles } from "../storage/scratchFile.ts";
import { alignShard } from "./alignShard.ts";
import { hearShard } from "./hearShard.ts";
import { adaptShard, forgetTraining, trainShard } from "./learnShard.ts";
import { measureShard } from "./measureShard.ts";
import { type Order, parseOrder } from "./orders.ts";
import { DamagedPart } from "./parts.ts";
import type { ShardTools } from "./shardTools.ts";
import { learnSpeakers, voicesShard } from "./voicesShard.ts";

/** What a worker answers: the key of the part that it made, or why it could not. */
export type OrderAnswer =
  | { readonly done: string; readonly hashes?: readonly (string | null)[] }
  | { readonly damaged: string }
  | { readonly refused: string };

export interface OrderContext {
  /** Folders below which all files must lie; null when the orders come from this very process. */
  readonly roots: readonly string[] | null;
  /** Called between utterances; may throw to stop. */
  readonly pause?: () => Promise<void>;
  /** Where decoded recordings are laid aside for the next stage, when the same machine does it. */
  readonly scratch?: { readonly folder: string; readonly bytes: number };
}

/** Does one order, given and answered as text. Rejects only for a fault of ours or of the machine. */
export async function runOrder(
  text: string,
  { roots, scratch, pause = goOn }: OrderContext,
): Promise<string> {
  const answer = (given: OrderAnswer) => JSON.stringify(given);
  try {
    const order = parseOrder(text);
    const files = new ConfinedFiles(roots);
    const tools: ShardTools = {
      cache: new ContentCache(files.confined(order.cache)),
      files,
      pause,
      scratch: scratch === undefined ? null : new ScratchFiles(scratch.folder, scratch.bytes),
    };
    return answer(await perform(order, tools));
  } catch (error) {
    if (error instanceof DamagedPart) return answer({ damaged: error.key });
    if (error instanceof FileChanged || (error instanceof UserError && error.exitCode !== stoppedExit))
      return answer({ refused: error.message });
    throw error;
  }
}

/** Exit code of a program that Ctrl-C stopped. */
export const stoppedExit = 130;

const goOn = async () => {};

async function perform(order: Order, tools: ShardTools): Promise<OrderAnswer> {
  if (order.kind !== "train") forgetTraining();
  if (order.kind === "hear") {
    const { key, hashes } = await hearShard(order, tools);
    return { done: key, hashes };
  }
  if (tools.cache.has(order.key)) return { done: order.key };
  const part = await makePart(order, tools);
  tools.cache.set(order.key, part);
  return { done: order.key };
}

function makePart(order: Exclude<Order, { kind: "hear" }>, tools: ShardTools): unknown {
  switch (order.kind) {
    case "train":
      return trainShard(order, tools.cache);
    case "adapt":
      return adaptShard(order, tools.cache);
    case "align":
      return alignShard(order, tools);
    case "voices":
      return voicesShard(order, tools.cache);
    case "learn":
      return learnSpeakers(order, tools.cache);
    case "measure":
      return measureShard(order, tools);
  }
}
