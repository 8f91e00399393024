import { alignDataset } from "./alignDataset.ts";
import type { ListedDataset, OpenDataset } from "./datasets/openDataset.ts";
import type { DatasetCard, Problem } from "./datasets/types.ts";
import { hearDataset } from "./hearDataset.ts";
import { measureRecordings } from "./measureRecordings.ts";
import { phonesOf, type ReadShard, readShard, shardKey, type TextReader } from "./readShards.ts";
import { countIn, cutShards, type Shard } from "./shards/cutShards.ts";
import { type MeasurePart, requirePart } from "./shards/parts.ts";
import { withRepairs } from "./shards/performOrder.ts";
import { ShardRows, setAside } from "./shards/shardRows.ts";
import { labelledSets } from "./shards/timedSets.ts";
import type { ShardWork } from "./shardWork.ts";
import type { TableRows } from "./storage/resultsWriter.ts";

export interface ReadDatasetOptions {
  /** Takes each shard's rows, in order. */
  readonly append: (rows: TableRows) => void;
  readonly reader: TextReader;
}

/** A dataset whose utterances lie in shards, which unpack them for whoever looks. */
export interface DatasetInShards {
  readonly dataset: ListedDataset;
  readonly shards: readonly Shard[];
  /** Whether there are recordings. */
  readonly heard: boolean;
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

/** Cuts a dataset into shards of about `shardSize` utterances and lets go of its list of them. */
export function inShards(opened: OpenDataset, shardSize: number): DatasetInShards {
  const { utterances, ...dataset } = opened;
  const heard = utterances.some(({ audio }) => audio !== null);
  return { dataset, shards: cutShards(utterances, heard ? shardSize : labelShards * shardSize), heard };
}

/**
 * Takes every utterance of a dataset through phonology, alignment and measures into the tables, shard by shard. Labels
 * alone are read once; recordings are heard, then aligned where there are no labels, then measured.
 */
export async function readDataset(
  { dataset, shards, heard }: DatasetInShards,
  work: ShardWork,
  { append, reader }: ReadDatasetOptions,
): Promise<ReadDataset> {
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

/** In two passes: while texts are read, the dictionary takes the memory that the tables then need. */
async function readLabels(
  dataset: ListedDataset,
  shards: readonly Shard[],
  reader: TextReader,
  work: ShardWork,
  append: Append,
): Promise<ReadDataset> {
  const problems: Problem[] = [];
  let phones = 0;
  const { id } = dataset.card;
  const total = countIn(shards);
  const read: { readonly shard: Shard; readonly key: string }[] = [];
  for await (const { shard, key } of work.map(`Reading ${id}`, total, shards, async (one) => ({
    shard: one,
    key: await labelRows(dataset, one, reader, work),
    utterances: one.count,
  })))
    read.push({ shard, key });
  await reader.rest();
  for await (const { shard, part } of work.map(`Gathering ${id}`, total, read, async (one) => ({
    shard: one.shard,
    part: requirePart<MeasurePart>(work.orders.cache, one.key),
    utterances: one.shard.count,
  }))) {
    append(shard, part);
    problems.push(...part.problems);
    phones += part.phones;
  }
  return { card: dataset.card, problems, phones };
}

/** Has the rows of a shard that has labels only in the cache; returns their key. */
async function labelRows(
  dataset: ListedDataset,
  shard: Shard,
  reader: TextReader,
  { orders }: ShardWork,
): Promise<string> {
  const key = orders.use(shardKey(dataset, shard, reader, "label"));
  if (orders.cache.has(key)) return key;
  const results = await reader.read(dataset, shard);
  const rows = new ShardRows();
  for (const result of results) rows.add(result, labelledSets(result), null);
  const part = rows.finish(
    results.flatMap(({ problems }) => problems),
    phonesOf(results),
  );
  orders.cache.set(key, part);
  return key;
}

async function readWithRecordings(
  dataset: ListedDataset,
  shards: readonly Shard[],
  reader: TextReader,
  work: ShardWork,
  append: Append,
): Promise<ReadDataset> {
  const { card } = dataset;
  const read: ReadShard[] = [];
  for await (const { shard } of work.map(`Reading ${card.id}`, countIn(shards), shards, async (one) => ({
    shard: await readShard(dataset, one, reader, work.orders),
    utterances: one.count,
  })))
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
