import { type SeededRandom, seededRandom } from "../statistics/seededRandom.ts";
import { type ClosureSums, closureMeans } from "./closureDurations.ts";
import { type MixtureBank, makeMixtureBank } from "./gaussians.ts";
import { type Inventory, inventoryOf, type UnitCounts } from "./inventory.ts";
import type { AcousticModel } from "./model.ts";
import { observationDims } from "./observations.ts";
import { splitMixtures } from "./splitMixtures.ts";
import { estimateBank, type Statistics } from "./statistics.ts";
import type { Collected } from "./trainingPass.ts";

/** What is asked of the recordings to learn from. Each part of them answers for itself; answers can be added up. */
export type TrainingQuestion =
  | { readonly kind: "survey" }
  | { readonly kind: "first"; readonly inventory: Inventory }
  | {
      readonly kind: "pass";
      readonly inventory: Inventory;
      readonly bank: MixtureBank;
      readonly frames: Float64Array;
    }
  | { readonly kind: "closures"; readonly model: AcousticModel };

/** Sounds that occur, and sums of every dimension over all frames. */
export interface Survey {
  readonly units: UnitCounts;
  readonly frames: number;
  readonly sum: Float64Array;
  readonly squares: Float64Array;
}

export interface FirstGuess {
  readonly statistics: Statistics;
  readonly occupancy: Float64Array;
  readonly visits: Float64Array;
}

export type TrainingAnswer =
  | { readonly kind: "survey"; readonly survey: Survey }
  | { readonly kind: "first"; readonly first: FirstGuess }
  | { readonly kind: "pass"; readonly pass: Collected }
  | { readonly kind: "closures"; readonly closures: ClosureSums };

export interface TrainingOptions {
  /** Shifts the first means at random by this many standard deviations, to see how far results hang on the start. */
  readonly jitter?: number;
  /** Seed of that jitter. The same corpus and options give the same model to the last bit. Default 1. */
  readonly seed?: number;
}

export interface Training {
  readonly model: AcousticModel;
  /** Log likelihood a frame in each pass. */
  readonly likelihoods: readonly number[];
  /** Utterances too short for their phones in the last pass. */
  readonly skipped: number;
}

/** Components a state in each pass. More passes and more components gained nothing on synthetic reference speech. */
const schedule = [1, 1, 2, 2] as const;
/** Variances stay above this share of the whole corpus's. */
const varianceFloor = 0.05;

/**
 * The course of training as questions to the recordings, wherever they are: a first guess from broad classes of
 * sounds, then four passes of re-estimation. Whoever runs it answers each question, and gets the model at the end.
 */
export function* training({
  jitter = 0,
  seed = 1,
}: TrainingOptions = {}): Generator<TrainingQuestion, Training, TrainingAnswer> {
  const surveyed = yield { kind: "survey" };
  if (surveyed.kind !== "survey") throw unexpected(surveyed);
  const inventory = inventoryOf(surveyed.survey.units);
  const { mean, variance } = overall(surveyed.survey);
  const floor = variance.map((v) => varianceFloor * v);
  const guessed = yield { kind: "first", inventory };
  if (guessed.kind !== "first") throw unexpected(guessed);
  const { first } = guessed;
  let bank = estimateBank(oneEach(inventory), first.statistics, floor, alike(inventory, mean, variance));
  let frames = meanFrames(first);
  let occupancy = first.occupancy;
  if (jitter > 0) bank = shake(bank, jitter, seededRandom(seed));
  const likelihoods: number[] = [];
  let skipped = 0;
  for (const components of schedule) {
    if (components > 1) bank = splitMixtures(bank, components, occupancy);
    const passed = yield { kind: "pass", inventory, bank, frames };
    if (passed.kind !== "pass") throw unexpected(passed);
    const { pass } = passed;
    likelihoods.push(pass.heard > 0 ? pass.logLikelihood / pass.heard : Number.NEGATIVE_INFINITY);
    skipped = pass.skipped;
    bank = estimateBank(bank.start, pass.statistics, floor, bank);
    frames = meanFrames(pass);
    occupancy = pass.occupancy;
  }
  const model: AcousticModel = { inventory, bank, frames, closureFrames: new Map() };
  const closed = yield { kind: "closures", model };
  if (closed.kind !== "closures") throw unexpected(closed);
  return { model: { ...model, closureFrames: closureMeans(closed.closures) }, likelihoods, skipped };
}

function unexpected({ kind }: TrainingAnswer): Error {
  return new Error(`an answer to another question: ${kind}`);
}

/** Mean frames a passage; states that were never passed get two. */
function meanFrames({ occupancy, visits }: Pick<Collected, "occupancy" | "visits">): Float64Array {
  return occupancy.map((frames, m) => (visits[m]! > 0 ? Math.max(1.05, frames / visits[m]!) : 2));
}

/** Mean and variance of each dimension over all frames. */
function overall({ sum, squares, frames }: Survey) {
  const mean = sum.map((v) => v / frames);
  return { mean, variance: squares.map((v, d) => Math.max(1e-6, v / frames - mean[d]! ** 2)) };
}

function oneEach(inventory: Inventory): Int32Array {
  return Int32Array.from({ length: inventory.states + 1 }, (_, m) => m);
}

/** Every state sounds like the whole corpus: what a state keeps that was never heard. */
function alike(inventory: Inventory, mean: Float64Array, variance: Float64Array): MixtureBank {
  const repeat = (values: Float64Array) =>
    Float64Array.from({ length: inventory.states * observationDims }, (_, i) => values[i % observationDims]!);
  const weight = new Float64Array(inventory.states).fill(1);
  return makeMixtureBank(observationDims, oneEach(inventory), weight, repeat(mean), repeat(variance));
}

function shake(bank: MixtureBank, jitter: number, random: SeededRandom): MixtureBank {
  const mean = bank.mean.map((v, i) => v + jitter * Math.sqrt(bank.variance[i]!) * random.normal());
  return makeMixtureBank(bank.dims, bank.start, bank.weight, mean, bank.variance);
}
