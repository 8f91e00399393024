import { componentScore, type MixtureBank, makeMixtureBank } from "./gaussians.ts";

/** Weighted sums of frames for each component: what a re-estimation needs. */
export interface Statistics {
  readonly dims: number;
  readonly weight: Float64Array;
  readonly sum: Float64Array;
  readonly squares: Float64Array;
}

export function createStatistics(components: number, dims: number): Statistics {
  return {
    dims,
    weight: new Float64Array(components),
    sum: new Float64Array(components * dims),
    squares: new Float64Array(components * dims),
  };
}

export function addToComponent(
  statistics: Statistics,
  component: number,
  weight: number,
  x: Float32Array,
  row: number,
): void {
  const { dims, sum, squares } = statistics;
  statistics.weight[component]! += weight;
  const base = component * dims;
  for (let d = 0; d < dims; d++) {
    const value = weight * x[row + d]!;
    sum[base + d]! += value;
    squares[base + d]! += value * x[row + d]!;
  }
}

const shares = new Float64Array(64);

/** Shares a frame among the components of a mixture by their posterior probability. */
export function addToMixture(
  statistics: Statistics,
  bank: MixtureBank,
  mixture: number,
  weight: number,
  x: Float32Array,
  row: number,
): void {
  const from = bank.start[mixture]!;
  const count = bank.start[mixture + 1]! - from;
  if (count === 1) {
    addToComponent(statistics, from, weight, x, row);
    return;
  }
  let best = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < count; k++) {
    shares[k] = componentScore(bank, from + k, x, row);
    best = Math.max(best, shares[k]!);
  }
  let total = 0;
  for (let k = 0; k < count; k++) {
    shares[k] = Math.exp(shares[k]! - best);
    total += shares[k]!;
  }
  for (let k = 0; k < count; k++) {
    const share = shares[k]! / total;
    if (share > 0.01) addToComponent(statistics, from + k, weight * share, x, row);
  }
}

/** Fewest frames from which a component is estimated; with fewer the old one stays. */
const fewestFrames = 2;

/** Mixtures re-estimated from the sums; variances stay above `floor`. `old` supplies what had too few frames. */
export function estimateBank(
  start: Int32Array,
  statistics: Statistics,
  floor: Float64Array,
  old: MixtureBank | null,
): MixtureBank {
  const { dims, weight, sum, squares } = statistics;
  const components = weight.length;
  const share = new Float64Array(components);
  const mean = old ? old.mean.slice() : new Float64Array(components * dims);
  const variance = old ? old.variance.slice() : new Float64Array(components * dims).fill(1);
  for (let m = 0; m + 1 < start.length; m++) {
    const count = start[m + 1]! - start[m]!;
    let total = 0;
    for (let k = start[m]!; k < start[m + 1]!; k++) total += weight[k]!;
    for (let k = start[m]!; k < start[m + 1]!; k++) {
      share[k] = total > 0 ? Math.max(1e-3, weight[k]! / total) : 1 / count;
      if (weight[k]! <= fewestFrames) continue;
      for (let d = 0; d < dims; d++) {
        const i = k * dims + d;
        mean[i] = sum[i]! / weight[k]!;
        variance[i] = Math.max(floor[d]!, squares[i]! / weight[k]! - mean[i]! ** 2);
      }
    }
  }
  return makeMixtureBank(dims, start, share, mean, variance);
}
