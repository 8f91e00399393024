import type { Normalisation } from "../signals/normalise.ts";
import { type SeededRandom, seededRandom } from "../statistics/seededRandom.ts";
import { closureDurations } from "./closureDurations.ts";
import type { Features } from "./features.ts";
import { flatStart } from "./flatStart.ts";
import { type MixtureBank, makeMixtureBank } from "./gaussians.ts";
import type { PhoneGraph } from "./graph.ts";
import { type Inventory, takeInventory } from "./inventory.ts";
import type { AcousticModel } from "./model.ts";
import { compileNetwork } from "./network.ts";
import { observationDims, observe } from "./observations.ts";
import { splitMixtures } from "./splitMixtures.ts";
import { addToComponent, estimateBank } from "./statistics.ts";
import { type Collected, emptyCollection, knownState, type Prepared, trainingPass } from "./trainingPass.ts";

/** One utterance to learn from. */
export interface TrainingUtterance {
  readonly features: Features;
  readonly graph: PhoneGraph;
  /** Of its speaker; see `speakerNormalisation`. */
  readonly normalisation: Normalisation;
}

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
 * Learns an acoustic model from recordings and what was said in them, without any labels: a first guess from broad
 * classes of sounds (`flatStart`), then four passes of re-estimation. Needs a few minutes of speech.
 */
export function trainModel(corpus: readonly TrainingUtterance[], options: TrainingOptions = {}): Training {
  if (corpus.length === 0) throw new RangeError("training needs at least one utterance");
  const { jitter = 0, seed = 1 } = options;
  const prepared: Prepared[] = corpus.map(({ features, graph, normalisation }) => ({
    network: compileNetwork(graph),
    x: observe(features, normalisation),
    frames: features.frames,
  }));
  const inventory = takeInventory(corpus.map(({ graph }) => graph));
  const { mean, variance } = overall(prepared);
  const floor = variance.map((v) => varianceFloor * v);
  const first = firstPass(corpus, prepared, inventory);
  let bank = estimateBank(oneEach(inventory), first.statistics, floor, alike(inventory, mean, variance));
  let frames = meanFrames(first);
  let last: Pick<Collected, "occupancy" | "visits"> = first;
  if (jitter > 0) bank = shake(bank, jitter, seededRandom(seed));
  const likelihoods: number[] = [];
  let skipped = 0;
  for (const components of schedule) {
    if (components > 1) bank = splitMixtures(bank, components, last.occupancy);
    const pass = trainingPass(prepared, inventory, bank, frames);
    likelihoods.push(pass.likelihood);
    skipped = pass.skipped;
    bank = estimateBank(bank.start, pass.statistics, floor, bank);
    frames = meanFrames(pass);
    last = pass;
  }
  const model: AcousticModel = { inventory, bank, frames, closureFrames: new Map() };
  return { model: { ...model, closureFrames: closureDurations(model, prepared) }, likelihoods, skipped };
}

/** Statistics of the first guess, one Gaussian a state. */
function firstPass(
  corpus: readonly TrainingUtterance[],
  prepared: readonly Prepared[],
  inventory: Inventory,
) {
  const collected = emptyCollection(inventory, inventory.states, observationDims);
  corpus.forEach(({ features }, i) => {
    const { network, x } = prepared[i]!;
    const passed = new Set<number>();
    const visit = (t: number, s: number, probability: number) => {
      const state = knownState(inventory, network, s);
      collected.occupancy[state]! += probability;
      if (!passed.has(s)) collected.visits[state]!++;
      passed.add(s);
      addToComponent(collected.statistics, state, probability, x, t * observationDims);
    };
    flatStart(features, network, visit);
  });
  return collected;
}

/** Mean frames a passage; states that were never passed get two. */
function meanFrames({ occupancy, visits }: Pick<Collected, "occupancy" | "visits">): Float64Array {
  return occupancy.map((frames, m) => (visits[m]! > 0 ? Math.max(1.05, frames / visits[m]!) : 2));
}

/** Mean and variance of each dimension over all frames. */
function overall(prepared: readonly Prepared[]) {
  const sum = new Float64Array(observationDims);
  const squares = new Float64Array(observationDims);
  let frames = 0;
  for (const { x } of prepared) {
    for (let i = 0; i < x.length; i++) {
      sum[i % observationDims]! += x[i]!;
      squares[i % observationDims]! += x[i]! * x[i]!;
    }
    frames += x.length / observationDims;
  }
  const mean = sum.map((v) => v / frames);
  return { mean, variance: squares.map((v, d) => Math.max(1e-6, v / frames - mean[d]! ** 2)) };
}

function oneEach(inventory: Inventory): Int32Array {
  return Int32Array.from({ length: inventory.states + 1 }, (_, m) => m);
}

/** Every state sounds like the whole corpus: what a state keeps that was never heard. */
function alike(inventory: Inventory, mean: Float64Array, variance: Float64Array): MixtureBank {
  const dims = mean.length;
  const repeat = (values: Float64Array) =>
    Float64Array.from({ length: inventory.states * dims }, (_, i) => values[i % dims]!);
  const weight = new Float64Array(inventory.states).fill(1);
  return makeMixtureBank(dims, oneEach(inventory), weight, repeat(mean), repeat(variance));
}

function shake(bank: MixtureBank, jitter: number, random: SeededRandom): MixtureBank {
  const mean = bank.mean.map((v, i) => v + jitter * Math.sqrt(bank.variance[i]!) * random.normal());
  return makeMixtureBank(bank.dims, bank.start, bank.weight, mean, bank.variance);
}
