import { join } from "node:path";
import { openDataset } from "./datasets/openDataset.ts";
import type { DatasetCard, Problem } from "./datasets/types.ts";
import * as messages from "./messages/results.ts";
import { interrupted } from "./messages/shards.ts";
import { UserError } from "./messages/userError.ts";
import { commonest } from "./problemTable.ts";
import { type DatasetInShards, inShards, readDataset } from "./readDataset.ts";
import { TextReader } from "./readShards.ts";
import type { DatasetSource, RunOptions } from "./runPipeline.ts";
import { defaultShardSize } from "./shards/cutShards.ts";
import type { Orders } from "./shards/performOrder.ts";
import { stoppedExit } from "./shards/runOrder.ts";
import { ShardWork, type Share } from "./shardWork.ts";
import { collectGarbage } from "./storage/collectGarbage.ts";
import type { TableRows } from "./storage/resultsWriter.ts";

/** What was read of all datasets. */
export interface MeasuredDatasets {
  readonly cards: readonly DatasetCard[];
  readonly problems: readonly Problem[];
  readonly phones: number;
}

/** Takes one dataset after the other through reading, alignment and measures; `append` gets the rows in order. */
export async function measureDatasets(
  options: RunOptions,
  orders: Orders,
  workFolder: string,
  append: (rows: TableRows) => void,
  share: Share | null = null,
): Promise<MeasuredDatasets> {
  const { seed, onProgress, shardSize = defaultShardSize } = options;
  const unpacked = join(workFolder, "unpacked");
  const stop = () => stopped(options);
  const work = new ShardWork(orders, { unpacked, seed, onProgress, stop, share });
  const reader = new TextReader(options.loadReader, options.readerKey ?? "");
  const cards: DatasetCard[] = [];
  const problems: Problem[] = [];
  const folderOf = new Map<string, string>();
  let phones = 0;
  for (const source of options.datasets) {
    const opened = await openInShards(source, shardSize);
    const { dataset } = opened;
    try {
      const { id } = dataset.card;
      const earlier = folderOf.get(id);
      if (earlier !== undefined) throw new UserError(messages.datasetTwice(id, earlier, source.folder));
      folderOf.set(id, source.folder);
      const read = await readDataset(opened, work, { append, reader });
      cards.push(read.card);
      problems.push(...dataset.problems, ...read.problems);
      phones += read.phones;
    } finally {
      dataset.tree.close();
    }
  }
  if (phones === 0) throw new UserError(messages.nothingToRead(commonest(problems, shownReasons)), 1);
  return { cards, problems, phones };
}

/** Kinds of problems that are told where nothing else is left to tell. */
const shownReasons = 3;

/** Apart from the rest, so that the list of all utterances is gone once they lie in shards. */
async function openInShards({ folder, card }: DatasetSource, shardSize: number): Promise<DatasetInShards> {
  const inHand = inShards(await openDataset(folder, card === null ? {} : { card }), shardSize);
  await collectGarbage();
  return inHand;
}

/** Why the run should stop, if so. */
export function stopped({ signal }: Pick<RunOptions, "signal">): Error | null {
  return signal?.aborted === true ? new UserError(interrupted(), stoppedExit) : null;
}
