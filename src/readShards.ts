import type { ReferencePhone } from "./alignment/boundaryErrors.ts";
import type { Interval } from "./alignment/interval.ts";
import type { ListedDataset } from "./datasets/openDataset.ts";
import type { LabelSetCard, Problem } from "./datasets/types.ts";
import { UserError } from "./messages/userError.ts";
import type { TextReading } from "./phonology/readingTypes.ts";
import { type LoadReader, type ReadResult, readOne, wantsText } from "./readUtterances.ts";
import { type CodeKind, codeOf } from "./shards/codeOf.ts";
import type { Shard } from "./shards/cutShards.ts";
import { Packed } from "./shards/packed.ts";
import type { ReadPart } from "./shards/parts.ts";
import type { Orders } from "./shards/performOrder.ts";
import { collectGarbage } from "./storage/collectGarbage.ts";
import { contentKey } from "./storage/contentCache.ts";

/** What is known of a shard once its texts and labels are read; the readings themselves are kept in the cache. */
export interface ReadShard extends Shard {
  readonly key: string;
  readonly digest: string;
  /** By place in the shard: whether there are labels with times, and whether the aligner is to place them. */
  readonly labelled: readonly boolean[];
  readonly unlabelled: readonly boolean[];
  /** Morae of the reading, by place in the shard; 0 where there is none. */
  readonly morae: readonly number[];
  /** Times that people placed, by place in the shard. */
  readonly byHand: Packed<ReadonlyMap<number, readonly ReferencePhone[]>>;
  /** Whether the dictionary gave some of the accents. */
  readonly accentsPredicted: boolean;
  readonly phones: number;
  readonly problems: readonly Problem[];
}

/** Reads texts, loading the dictionary when the first text asks for it. */
export class TextReader {
  readonly #load: LoadReader;
  /** Stands for whatever the readings depend on beside our code, such as a lexicon. */
  readonly key: string;
  #loaded: Promise<(text: string) => TextReading> | null = null;

  constructor(load: LoadReader, key: string) {
    this.#load = load;
    this.key = key;
  }

  /** Lets go of the dictionary, until another text asks for it: it takes 150 MB, and a second to load. */
  async rest(): Promise<void> {
    if (this.#loaded === null) return;
    this.#loaded = null;
    await collectGarbage();
  }

  async read(dataset: ListedDataset, { utterances }: Shard): Promise<ReadResult[]> {
    const all = utterances.value;
    if (this.#loaded === null && all.some((one) => wantsText(one, "all"))) this.#loaded = this.#load();
    const readText = await this.#loaded;
    return all.map((one) => readOne(dataset, one, wantsText(one, "all") ? readText : null));
  }
}

/** Changes with everything that the reading of a shard's texts and labels depends on. */
export function shardKey(
  dataset: ListedDataset,
  { utterances }: Shard,
  reader: TextReader,
  kind: CodeKind,
): string {
  const all = utterances.value;
  const labels = all.flatMap((one) => one.labels.map(({ path }) => bytesOf(dataset, path)));
  const facts = dataset.card.labelSets.map(factsOf);
  return contentKey(kind, codeOf(kind), reader.key, JSON.stringify([facts, all]), ...labels);
}

/** A label file's content; a file that has gone is told of when it is read as labels. */
function bytesOf({ tree }: ListedDataset, path: string): Uint8Array | string {
  try {
    return tree.read(path);
  } catch (error) {
    if (error instanceof UserError) return "unreadable";
    throw error;
  }
}

/** Reads a shard's texts and labels, or finds them read. */
export async function readShard(
  dataset: ListedDataset,
  shard: Shard,
  reader: TextReader,
  orders: Orders,
): Promise<ReadShard> {
  const key = orders.use(shardKey(dataset, shard, reader, "read"));
  let part = orders.cache.get<ReadPart>(key);
  if (part === null) {
    const results = await reader.read(dataset, shard);
    part = { digest: digestOf(results), results };
    orders.cache.set(key, part);
  }
  const { digest, results } = part;
  const leftOut = leftOutIn(dataset);
  const byHand = new Map<number, ReferencePhone[]>();
  for (const [place, result] of results.entries()) {
    const labels = labelsByHand(result);
    if (labels !== null) byHand.set(place, labels);
  }
  return {
    ...shard,
    key,
    digest,
    labelled: results.map(isLabelled),
    unlabelled: results.map((result) => needsAlignment(result) && !leftOut.has(result.utterance.id)),
    morae: results.map(({ read: { reading } }) => reading?.morae.length ?? 0),
    byHand: new Packed(byHand),
    accentsPredicted: results.some(
      ({ read: { reading } }) => reading?.from === "predicted" && reading.accentOfMora !== null,
    ),
    phones: phonesOf(results),
    problems: results.flatMap(({ problems }) => problems),
  };
}

export function phonesOf(results: readonly ReadResult[]): number {
  return results.reduce(
    (sum, { labelled }) => sum + labelled.reduce((own, { phones }) => own + phones, 0),
    0,
  );
}

/** Without the lines in which utterances are listed, and without what counts other utterances. */
function digestOf(results: readonly ReadResult[]): string {
  const lasting = results.map(({ utterance, read, labelled }) => [
    { ...utterance, file: "", line: null },
    read,
    labelled.map((set) => ({ ...set, labelSet: factsOf(set.labelSet) })),
  ]);
  return contentKey(JSON.stringify(lasting));
}

function factsOf({ note: _, utterances: __, ...facts }: LabelSetCard): object {
  return facts;
}

function isLabelled({ labelled }: ReadResult): boolean {
  return labelled.some(({ intervals }) => intervals.length > 0);
}

/** Only what has a recording and a reading but no labels of its own: what its labels do not fit is not aligned unasked. */
function needsAlignment(result: ReadResult): boolean {
  const { utterance, read } = result;
  return (
    utterance.audio !== null && read.reading !== null && !isLabelled(result) && utterance.labels.length === 0
  );
}

const leftOutOf = new WeakMap<ListedDataset, ReadonlySet<string>>();

/** Utterances that opening the dataset left out, such as one whose labels reach beyond its recording. */
function leftOutIn(dataset: ListedDataset): ReadonlySet<string> {
  const known = leftOutOf.get(dataset);
  if (known !== undefined) return known;
  const excluded = dataset.problems.filter((one) => one.excluded);
  const named = new Set(excluded.flatMap(({ utterance }) => (utterance === null ? [] : [utterance])));
  leftOutOf.set(dataset, named);
  return named;
}

/** Labels with times that people placed, of an utterance that could be aligned too. */
function labelsByHand({ utterance, read, labelled }: ReadResult): ReferencePhone[] | null {
  if (utterance.audio === null || read.reading === null) return null;
  const set = labelled.find(
    ({ labelSet, readingFits }) => labelSet.timeBasis === "annotated" && readingFits === true,
  );
  return set === undefined ? null : set.intervals.flatMap(referencePhones);
}

/** A geminate as its closure and the consonant after it, as the aligner has them. */
function referencePhones({ phone, startMs, endMs, closureEndMs, devoiced }: Interval): ReferencePhone[] {
  const whole = { phone, devoiced: devoiced === true, startMs, endMs };
  if (closureEndMs === null) return [whole];
  return [
    { ...whole, phone: "cl", endMs: closureEndMs },
    { ...whole, startMs: closureEndMs },
  ];
}
