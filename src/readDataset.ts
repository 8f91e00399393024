import { alignDataset } from "./alignDataset.ts";
import type { OpenDataset } from "./datasets/openDataset.ts";
import type { DatasetCard, Problem } from "./datasets/types.ts";
import { hearDataset } from "./hearDataset.ts";
import { measureRecordings } from "./measureRecordings.ts";
import { phonesOf, type ReadShard, readShard, shardKey, type TextReader } from "./readShards.ts";
import { cutShards, type Shard } from "./shards/cutShards.ts";
import type { MeasurePart } from "./shards/parts.ts";
import { withRepairs } from "./shards/performOrder.ts";
import { ShardRows, setAside } from "./shards/shardRows.ts";
import { labelledSets } from "./shards/timedSets.ts";
import type { ShardWork } from "./shardWork.ts";
import type { TableRows } from "./storage/resultsWriter.ts";

export interface ReadDatasetOptions {
  /** Takes each shard's rows, in order. */
  readonly append: (rows: TableRows) => void;
  readonly reader: TextReader;
  /** Utterances in a shard, about. */
  readonly shardSize: number;
}

export interface ReadDataset {
  /** The dataset's card with the label sets that were made here. */
  readonly card: DatasetCard;
  readonly problems: readonly Problem[];
  /** Phones in the label files and alignments that were used. */
  readonly phones: number;
}

/** Labels alone are quickly read: this many times more utterances make up a shard. */
const labelShards = 8;

/**
 * Takes every utterance of a dataset through phonology, alignment and measures into the tables, shard by shard. Labels
 * alone are read once; recordings are heard, then aligned where there are no labels, then measured.
 */
export async function readDataset(
  dataset: OpenDataset,
  work: ShardWork,
  { append, reader, shardSize }: ReadDatasetOptions,
): Promise<ReadDataset> {
  const heard = dataset.utterances.some(({ audio }) => audio !== null);
  const shards = cutShards(dataset.utterances, heard ? shardSize : labelShards * shardSize);
  const appended = new Set<number>();
  const appendOnce = ({ index }: Shard, part: MeasurePart) => {
    if (!appended.has(index)) append(part);
    appended.add(index);
  };
  return withRepairs(() =>
    heard
      ? readWithRecordings(dataset, shards, reader, work, appendOnce)
      : readLabels(dataset, shards, reader, work, appendOnce),
  );
}

type Append = (shard: Shard, part: MeasurePart) => void;

async function readLabels(
  dataset: OpenDataset,
  shards: readonly Shard[],
  reader: TextReader,
  work: ShardWork,
  append: Append,
): Promise<ReadDataset> {
  const problems: Problem[] = [];
  let phones = 0;
  const { id } = dataset.card;
  const total = dataset.utterances.length;
  for await (const { shard, part } of work.map(`Reading ${id}`, total, shards, async (one) => ({
    shard: one,
    part: await labelRows(dataset, one, reader, work),
    utterances: one.utterances.length,
  }))) {
    append(shard, part);
    problems.push(...part.problems);
    phones += part.phones;
  }
  await reader.rest();
  return { card: dataset.card, problems, phones };
}

/** Rows of a shard that has labels only. */
async function labelRows(
  dataset: OpenDataset,
  shard: Shard,
  reader: TextReader,
  { orders }: ShardWork,
): Promise<MeasurePart> {
  const key = orders.use(shardKey(dataset, shard, reader, "label"));
  const kept = orders.cache.get<MeasurePart>(key);
  if (kept !== null) return kept;
  const results = await reader.read(dataset, shard);
  const rows = new ShardRows();
  for (const result of results) rows.add(result, labelledSets(result), null);
  const part = rows.finish(
    results.flatMap(({ problems }) => problems),
    phonesOf(results),
  );
  orders.cache.set(key, part);
  return part;
}

async function readWithRecordings(
  dataset: OpenDataset,
  shards: readonly Shard[],
  reader: TextReader,
  work: ShardWork,
  append: Append,
): Promise<ReadDataset> {
  const { card } = dataset;
  const read: ReadShard[] = [];
  for await (const { shard } of work.map(
    `Reading ${card.id}`,
    dataset.utterances.length,
    shards,
    async (one) => ({
      shard: await readShard(dataset, one, reader, work.orders),
      utterances: one.utterances.length,
    }),
  ))
    read.push(shard);
  await reader.rest();
  const heard = await hearDataset(dataset, read, work);
  const aligning = read.some(({ unlabelled }) => unlabelled.includes(true));
  const aligned = aligning ? await alignDataset(card, heard, work) : null;
  const problems = [
    ...read.flatMap((shard) => shard.problems),
    ...heard.problems,
    ...(aligned?.problems ?? []),
  ];
  let phones = read.reduce((sum, shard) => sum + shard.phones, 0);
  for await (const { shard, part, failed } of measureRecordings(dataset, heard.shards, aligned, work)) {
    if (part !== null) append(shard, part);
    problems.push(...(part?.problems ?? setAside(shard, "Measuring", failed)));
    phones += part?.phones ?? 0;
  }
  const made = aligned?.labelSet ?? null;
  return {
    card: made === null ? card : { ...card, labelSets: [...card.labelSets, made] },
    problems,
    phones,
  };
}
