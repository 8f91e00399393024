import { closureMeans, closureSums } from "./closureDurations.ts";
import { type AcousticModel, scoringOf } from "./model.ts";
import { compileNetwork } from "./network.ts";
import { observe } from "./observations.ts";
import { estimateBank, type Statistics } from "./statistics.ts";
import { type Prepared, trainingPass } from "./trainingPass.ts";
import type { TrainingUtterance } from "./trainModel.ts";

/**
 * Frames that the seed counts for in each sound, shared among its components. 20 to 2,000 were tried on ten seconds to
 * three minutes of real speech; between 100 and 500 little changes.
 */
const seedFrames = 200;
/** Passages that the seed counts for in the length of each state. */
const seedPassages = 5;
const passes = 4;
/**
 * Variances stay above this, in units of the normalised features. People's slopes are less even than synthetic ones:
 * without it a few seconds of real speech were aligned worse (10 s: 84 % within 50 ms instead of 95).
 */
const varianceFloor = 0.05;
/**
 * Whether a corpus of so much speech is better aligned by the seed than by what it teaches alone: from 10 s, below which
 * the seed is not fitted well, to a minute, from which on nothing is gained. Measured on real speech by
 * `npm run bench -- seedModel`.
 */
export function seedHelps(spokenMs: number): boolean {
  return spokenMs >= 10_000 && spokenMs < 60_000;
}

/**
 * Fits a model of other speech to these recordings: four passes of re-estimation in which the seed counts as much as
 * 200 frames of each sound (maximum a posteriori, conjugate priors; Gauvain & Lee 1994, IEEE Transactions on Speech
 * and Audio Processing 2:291–298). For recordings too few to learn from alone. Null when the seed lacks a sound.
 */
export function adaptModel(seed: AcousticModel, corpus: readonly TrainingUtterance[]): AcousticModel | null {
  const prepared: Prepared[] = corpus.map(({ features, graph, normalisation }) => ({
    network: compileNetwork(graph),
    x: observe(features, normalisation),
    frames: features.frames,
  }));
  const { inventory } = seed;
  if (prepared.some(({ network }) => scoringOf(network, inventory, seed.frames) === null)) return null;
  const floor = new Float64Array(seed.bank.dims).fill(varianceFloor);
  let { bank, frames } = seed;
  for (let pass = 0; pass < passes; pass++) {
    const { statistics, occupancy, visits } = trainingPass(prepared, inventory, bank, frames);
    addSeed(statistics, seed);
    bank = estimateBank(bank.start, statistics, floor, bank);
    frames = seed.frames.map((length, m) =>
      Math.max(1.05, (occupancy[m]! + seedPassages * length) / (visits[m]! + seedPassages)),
    );
  }
  const model: AcousticModel = { inventory, bank, frames, closureFrames: new Map() };
  const heard = closureMeans(closureSums(model, prepared));
  return { ...model, closureFrames: new Map([...seed.closureFrames, ...heard]) };
}

function addSeed({ dims, weight, sum, squares }: Statistics, { bank }: AcousticModel): void {
  for (let k = 0; k < bank.weight.length; k++) {
    const counted = seedFrames * bank.weight[k]!;
    weight[k]! += counted;
    for (let i = k * dims; i < (k + 1) * dims; i++) {
      sum[i]! += counted * bank.mean[i]!;
      squares[i]! += counted * (bank.variance[i]! + bank.mean[i]! ** 2);
    }
  }
}
