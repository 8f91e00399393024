import type { AlignedDataset } from "./alignDataset.ts";
import type { ListedDataset } from "./datasets/openDataset.ts";
import { type HeardShard, unpackMembers } from "./hearDataset.ts";
import type { SpeakerReference } from "./measures/acoustics/learnSpeaker.ts";
import { codeOf } from "./shards/codeOf.ts";
import { countIn } from "./shards/cutShards.ts";
import type { OrderOf } from "./shards/orders.ts";
import type { LearnPart, MeasurePart } from "./shards/parts.ts";
import type { ShardWork } from "./shardWork.ts";
import { contentKey } from "./storage/contentCache.ts";
import { toTaggedJson } from "./storage/taggedJson.ts";

/** Recordings of one speaker from which the sound of voice and voicelessness is learnt; more teach nothing new. */
const recordingsPerSpeaker = 300;
/** Recordings that one order learns speakers from, about. */
const recordingsPerOrder = 600;

type Speakers = ReadonlyMap<string, SpeakerReference>;

/**
 * Measures the recordings of a dataset in two passes: first what voice and its absence sound like for each speaker,
 * then every vowel and consonant. Yields each shard's rows, in order.
 */
export async function* measureRecordings(
  dataset: ListedDataset,
  shards: readonly HeardShard[],
  aligned: AlignedDataset | null,
  work: ShardWork,
): AsyncGenerator<{ shard: HeardShard; part: MeasurePart | null; failed: string }> {
  const { id } = dataset.card;
  const { orders } = work;
  const speakers = await learnVoices(id, shards, aligned, work);
  yield* work.map(`Measuring ${id}`, countIn(shards), shards, async (shard) => {
    const order = measureOrder(shard, aligned, speakers, work);
    if (!orders.cache.has(order.key)) unpackMembers(dataset, shard.recordings.value, work.unpacked);
    const { part, failed } = await orders.attempt(() => orders.part<MeasurePart>(order));
    return { shard, part, failed, utterances: shard.count };
  });
}

function timesOf(shard: HeardShard, aligned: AlignedDataset | null) {
  const own = aligned?.shards.get(shard.index) ?? null;
  return {
    hear: shard.hear,
    read: shard.key,
    align: own?.align ?? null,
    fitting: own?.fitting ?? null,
  };
}

/** What the times of a shard hang on, as text. */
function timesKey(shard: HeardShard, aligned: AlignedDataset | null): string {
  const { hear, align, fitting } = timesOf(shard, aligned);
  return JSON.stringify([hear, shard.digest, align, fitting]);
}

async function learnVoices(
  id: string,
  shards: readonly HeardShard[],
  aligned: AlignedDataset | null,
  work: ShardWork,
): Promise<Speakers> {
  const { orders } = work;
  const samples = new Map<string, { recordings: number; sources: { voices: string; at: number[] }[] }>();
  const chosen = shards.flatMap((shard) => {
    const at = chooseFrom(shard, aligned, samples);
    return at.length === 0 ? [] : [{ shard, order: voicesOrder(shard, at, aligned, work) }];
  });
  const total = chosen.reduce((sum, { order }) => sum + order.at.length, 0);
  const task = `Learning voices of ${id}`;
  for await (const { shard, order, learnt } of work.map(task, total, chosen, async ({ shard, order }) => {
    const { part } = await orders.attempt(async () => orders.ensure(order).then(() => order));
    return { shard, order, learnt: part !== null, utterances: order.at.length };
  }))
    for (const place of learnt ? order.at : []) {
      const { sources } = samples.get(shard.utterances.value[place]!.speaker)!;
      if (sources.at(-1)?.voices === order.key) sources.at(-1)!.at.push(place);
      else sources.push({ voices: order.key, at: [place] });
    }
  const speakers = new Map<string, SpeakerReference>();
  const batches = batchesOf([...samples]);
  for await (const { part } of work.map(
    task,
    batches.length,
    batches,
    async (batch) => ({
      part: await orders.must<LearnPart>(learnOrder(batch, work), `The voices of ${id}`),
    }),
    "groups of speakers",
  ))
    for (const [speaker, reference] of part) speakers.set(speaker, reference);
  return speakers;
}

type Samples = [
  speaker: string,
  { readonly recordings: number; readonly sources: { voices: string; at: number[] }[] },
];

/** Places in a shard of recordings that their speakers are still to be learnt from. */
function chooseFrom(
  shard: HeardShard,
  aligned: AlignedDataset | null,
  samples: Map<string, { recordings: number; sources: { voices: string; at: number[] }[] }>,
): number[] {
  const own = new Set(aligned?.shards.get(shard.index)?.fitting.aligned);
  const recordings = shard.recordings.value;
  return shard.utterances.value.flatMap(({ speaker }, place) => {
    const usable = shard.durationsMs[place] !== null && recordings[place]?.voicing === true;
    if (!usable || !(shard.labelled[place]! || own.has(place))) return [];
    const sample = samples.get(speaker) ?? { recordings: 0, sources: [] };
    samples.set(speaker, sample);
    return sample.recordings++ < recordingsPerSpeaker ? [place] : [];
  });
}

function voicesOrder(
  shard: HeardShard,
  at: number[],
  aligned: AlignedDataset | null,
  { orders }: ShardWork,
): OrderOf<"voices"> {
  return {
    kind: "voices",
    cache: orders.cache.folder,
    key: contentKey("voices", codeOf("measure"), timesKey(shard, aligned), JSON.stringify(at)),
    ...timesOf(shard, aligned),
    at,
  };
}

function batchesOf(samples: readonly Samples[]): Samples[][] {
  const batches: Samples[][] = [];
  let recordings = Number.POSITIVE_INFINITY;
  for (const one of samples) {
    if (recordings >= recordingsPerOrder) {
      batches.push([]);
      recordings = 0;
    }
    batches.at(-1)!.push(one);
    recordings += Math.min(one[1].recordings, recordingsPerSpeaker);
  }
  return batches;
}

function learnOrder(batch: readonly Samples[], { orders }: ShardWork): OrderOf<"learn"> {
  const samples = batch.map(([speaker, { sources }]): OrderOf<"learn">["samples"][number] => [
    speaker,
    sources,
  ]);
  return {
    kind: "learn",
    cache: orders.cache.folder,
    key: contentKey("learn", codeOf("measure"), JSON.stringify(samples)),
    samples,
  };
}

function measureOrder(
  shard: HeardShard,
  aligned: AlignedDataset | null,
  speakers: Speakers,
  { orders }: ShardWork,
): OrderOf<"measure"> {
  const own = [...new Set(shard.utterances.value.map(({ speaker }) => speaker))].flatMap(
    (speaker): OrderOf<"measure">["speakers"] => {
      const reference = speakers.get(speaker);
      if (reference === undefined) return [];
      const { classifier, ...rest } = reference;
      return [[speaker, { ...rest, classifier: { ...classifier, weights: [...classifier.weights] } }]];
    },
  );
  return {
    kind: "measure",
    cache: orders.cache.folder,
    key: contentKey("measure", codeOf("measure"), timesKey(shard, aligned), toTaggedJson(own)),
    ...timesOf(shard, aligned),
    recordings: [...shard.recordings.value],
    speakers: own,
  };
}
