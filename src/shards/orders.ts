import * as v from "valibot";
import { fromTaggedJson, toTaggedJson } from "../storage/taggedJson.ts";

const Key = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/, "must be a key of 64 hexadecimal digits"));
const Path = v.pipe(
  v.string(),
  v.minLength(1),
  v.maxLength(4096),
  v.check((path) => !path.includes("\0"), "must hold no NUL"),
);
const Place = v.pipe(v.number(), v.integer(), v.minValue(0));
const Seconds = v.nullable(v.pipe(v.number(), v.finite()));

/** A recording, or the part of one that an utterance is. */
const Recording = v.object({
  /** Relative to the dataset, for people. */
  audio: Path,
  /** Where it lies. */
  file: Path,
  /** SHA-256 of its bytes, `unreadable`, or null when nobody has read it yet. */
  hash: v.nullable(v.string()),
  audioStartSec: Seconds,
  audioEndSec: Seconds,
  /** Whether the aligner, and whether the measures, will want to hear it. */
  features: v.boolean(),
  voicing: v.boolean(),
});
export type RecordingRef = v.InferOutput<typeof Recording>;

const numbers = v.instance(Float64Array);
/** By speaker, as pairs: a speaker may be called anything. */
const Normalisations = v.array(v.tuple([v.string(), v.object({ mean: numbers, scale: numbers })]));
const nan = v.union([v.number(), v.nan()]);
const Speakers = v.array(
  v.tuple([
    v.string(),
    v.object({
      voicedFrames: v.number(),
      voicelessFrames: v.number(),
      voiceDb: nan,
      classifier: v.object({ weights: v.array(nan), bias: nan }),
      islandPeriodicity: nan,
      islandLowDb: nan,
      islandMidDb: nan,
      f0MedianHz: nan,
      f0Range: v.object({ low: nan, high: nan }),
    }),
  ]),
);

const Fitting = v.object({
  /** Places in the shard whose alignment is used. */
  aligned: v.array(Place),
  calibration: v.nullable(v.object({ boundaries: v.number(), offsetsMs: v.record(v.string(), v.number()) })),
});
export type Fitting = v.InferOutput<typeof Fitting>;

const Learnt = v.object({ hear: Key, read: Key, at: v.array(Place) });
const common = { cache: Path, key: Key };
const timed = { hear: Key, read: Key, align: v.nullable(Key), fitting: v.nullable(Fitting) };

/** What a worker can be told to do; parts are named by their keys in the cache. */
const Order = v.variant("kind", [
  v.object({
    kind: v.literal("hear"),
    cache: Path,
    /** Of the code that hears. */
    code: Key,
    /** By place in the shard; null for an utterance without a recording. */
    recordings: v.array(v.nullable(Recording)),
  }),
  v.object({
    kind: v.literal("train"),
    ...common,
    question: Key,
    corpus: v.array(Learnt),
    normalisations: Normalisations,
  }),
  v.object({ kind: v.literal("adapt"), ...common, corpus: v.array(Learnt), normalisations: Normalisations }),
  v.object({
    kind: v.literal("align"),
    ...common,
    hear: Key,
    read: Key,
    model: Key,
    at: v.array(Place),
    normalisations: Normalisations,
  }),
  v.object({ kind: v.literal("voices"), ...common, ...timed, at: v.array(Place) }),
  v.object({
    kind: v.literal("learn"),
    ...common,
    samples: v.array(v.tuple([v.string(), v.array(v.object({ voices: Key, at: v.array(Place) }))])),
  }),
  v.object({
    kind: v.literal("measure"),
    ...common,
    ...timed,
    recordings: v.array(v.nullable(Recording)),
    speakers: Speakers,
  }),
]);
export type Order = v.InferOutput<typeof Order>;
export type OrderKind = Order["kind"];
export type OrderOf<K extends OrderKind> = Extract<Order, { kind: K }>;

export function writeOrder(order: Order): string {
  return toTaggedJson(order);
}

/** Throws an Error that says what is wrong when the text is no order. */
export function parseOrder(text: string): Order {
  const parsed = v.safeParse(Order, readTagged(text));
  if (parsed.success) return parsed.output;
  const issue = parsed.issues[0];
  throw new Error(`this is no order: ${v.getDotPath(issue) ?? "the whole"}: ${issue.message}`);
}

function readTagged(text: string): unknown {
  try {
    return fromTaggedJson(text);
  } catch (error) {
    throw new Error(`this is no order: ${error instanceof Error ? error.message : String(error)}`);
  }
}
