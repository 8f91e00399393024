import { seedHelps } from "./alignment/adaptModel.ts";
import { addAnswers } from "./alignment/addAnswers.ts";
import { chooseTrainingSample } from "./alignment/chooseTrainingSample.ts";
import type { AcousticModel } from "./alignment/model.ts";
import { serialiseModel } from "./alignment/serialiseModel.ts";
import { type TrainingAnswer, training } from "./alignment/training.ts";
import type { HeardShard } from "./hearDataset.ts";
import { codeOf } from "./shards/codeOf.ts";
import type { OrderOf } from "./shards/orders.ts";
import type { ShardWork } from "./shardWork.ts";
import type { Normalisation } from "./signals/normalise.ts";
import { contentKey } from "./storage/contentCache.ts";
import { loadSeedModel } from "./storage/loadSeedModel.ts";
import { toTaggedJson } from "./storage/taggedJson.ts";

/** An utterance that the aligner hears. */
export interface Listened {
  readonly shard: HeardShard;
  readonly place: number;
  readonly speaker: string;
  readonly durationMs: number;
}

type Corpus = OrderOf<"train">["corpus"];

/**
 * Learns how the sounds of a dataset sound, from a sample of its recordings; where there is too little of them, fits the
 * project's seed to them. Parts of the sample answer each question of `training` on their own, and the answers are added
 * up in the order of the sample: the model is the same to the last bit whoever did them. Returns its key in the cache.
 */
export async function learnModel(
  id: string,
  listened: readonly Listened[],
  normalisations: ReadonlyMap<string, Normalisation>,
  work: ShardWork,
): Promise<string> {
  const { orders, seed } = work;
  const sample = chooseTrainingSample(listened, { seed }).map((i) => listened[i]!);
  const speakers = [...new Set(sample.map(({ speaker }) => speaker))];
  const own = speakers.map((speaker) => [speaker, normalisations.get(speaker)!] as const);
  const adapt = seedHelps(listened.reduce((sum, { durationMs }) => sum + durationMs, 0));
  const content = sample.map(({ shard, place }) => [shard.hear, shard.digest, place]);
  const start = adapt ? loadSeedModel() : "";
  const key = contentKey("model", codeOf("train"), start, JSON.stringify(content), toTaggedJson(own));
  orders.use(key);
  if (orders.cache.get<string>(key) !== null) return key;
  const course: Course = { id, key, normalisations: own.map(([name, one]) => [name, copyOf(one)]), work };
  const adapted = adapt ? await adaptSeed(course, sample) : "";
  orders.cache.set(key, adapted === "" ? serialiseModel(await train(course, sample)) : adapted);
  return key;
}

interface Course {
  readonly id: string;
  readonly key: string;
  readonly normalisations: OrderOf<"train">["normalisations"];
  readonly work: ShardWork;
}

function copyOf({ mean, scale }: Normalisation): {
  mean: Float64Array<ArrayBuffer>;
  scale: Float64Array<ArrayBuffer>;
} {
  return { mean: Float64Array.from(mean), scale: Float64Array.from(scale) };
}

function adaptSeed({ id, key, normalisations, work }: Course, sample: readonly Listened[]): Promise<string> {
  const { orders } = work;
  const order = {
    kind: "adapt",
    cache: orders.cache.folder,
    key: contentKey("adapted", key),
    corpus: corpusOf(sample),
    normalisations,
  } as const;
  return orders.must<string>(order, `The sounds of ${id}`);
}

/** Questions of one training: survey, first guess, four passes, closures. */
const questions = 7;
/** Closures settle long before that many utterances. */
const mostClosures = 200;

async function train(course: Course, sample: readonly Listened[]): Promise<AcousticModel> {
  const { id, key, work } = course;
  const { cache } = work.orders;
  const parts = partsOf(sample);
  const steps = training();
  const scratch: string[] = [];
  let step = steps.next();
  for (let asked = 1; step.done !== true; asked++) {
    const question = contentKey("question", key, String(asked));
    cache.set(question, step.value);
    scratch.push(question);
    const wanted = step.value.kind === "closures" ? firstOf(parts, mostClosures) : parts;
    const answers: TrainingAnswer[] = [];
    for await (const { answer } of work.map(
      `Learning the sounds of ${id}`,
      wanted.length,
      wanted.entries(),
      async ([i, part]) => ({ answer: await ask(course, question, i, part, scratch) }),
      `parts in step ${asked} of ${questions}`,
    ))
      answers.push(answer);
    step = steps.next(addAnswers(answers));
  }
  for (const one of scratch) work.orders.forget(one);
  return step.value.model;
}

async function ask(
  { id, normalisations, work }: Course,
  question: string,
  index: number,
  part: readonly Listened[],
  scratch: string[],
): Promise<TrainingAnswer> {
  const { orders } = work;
  const key = contentKey("answer", question, String(index));
  scratch.push(key);
  const speakers = new Set(part.map(({ speaker }) => speaker));
  const order = {
    kind: "train",
    cache: orders.cache.folder,
    key,
    question,
    corpus: corpusOf(part),
    normalisations: normalisations.filter(([speaker]) => speakers.has(speaker)),
  } as const;
  return orders.must<TrainingAnswer>(order, `The sounds of ${id}`);
}

/** Speech in one part of the sample: ten parts at most, since the sample is half an hour. */
const partMs = 180_000;

function partsOf(sample: readonly Listened[]): Listened[][] {
  const parts: Listened[][] = [];
  let lastMs = Number.POSITIVE_INFINITY;
  for (const one of sample) {
    if (lastMs >= partMs) {
      parts.push([]);
      lastMs = 0;
    }
    parts.at(-1)!.push(one);
    lastMs += one.durationMs;
  }
  return parts;
}

/** As many parts from the start as hold `most` utterances. */
function firstOf(parts: readonly Listened[][], most: number): Listened[][] {
  const first: Listened[][] = [];
  for (let count = 0; first.length < parts.length && count < most; count += first.at(-1)!.length)
    first.push(parts[first.length]!);
  return first;
}

function corpusOf(sample: readonly Listened[]): Corpus {
  const corpus: Corpus = [];
  let latest: HeardShard | null = null;
  for (const { shard, place } of sample) {
    if (shard !== latest) corpus.push({ hear: shard.hear, read: shard.key, at: [] });
    latest = shard;
    corpus.at(-1)!.at.push(place);
  }
  return corpus;
}
