import { type MixtureBank, makeMixtureBank } from "./gaussians.ts";

/** Frames that must stand behind each component: fewer, and it would learn single sounds by heart. */
const framesPerComponent = 30;

/**
 * Mixtures of up to `target` components, fewer where `frames` (one a mixture) are few. The heaviest component is cut
 * in two, its halves 0.2 standard deviations to either side.
 */
export function splitMixtures(bank: MixtureBank, target: number, frames: Float64Array): MixtureBank {
  const { dims } = bank;
  const start = [0];
  const weight: number[] = [];
  const mean: Float64Array[] = [];
  const variance: Float64Array[] = [];
  for (let m = 0; m + 1 < bank.start.length; m++) {
    const first = weight.length;
    for (let k = bank.start[m]!; k < bank.start[m + 1]!; k++) {
      weight.push(bank.weight[k]!);
      mean.push(bank.mean.slice(k * dims, (k + 1) * dims));
      variance.push(bank.variance.slice(k * dims, (k + 1) * dims));
    }
    const limit = Math.min(target, Math.floor(frames[m]! / framesPerComponent));
    while (weight.length - first < limit) {
      let heaviest = first;
      for (let k = first; k < weight.length; k++) if (weight[k]! > weight[heaviest]!) heaviest = k;
      const centre = mean[heaviest]!;
      const spread = variance[heaviest]!;
      weight[heaviest] = weight[heaviest]! / 2;
      weight.push(weight[heaviest]!);
      mean[heaviest] = centre.map((v, d) => v - 0.2 * Math.sqrt(spread[d]!));
      mean.push(centre.map((v, d) => v + 0.2 * Math.sqrt(spread[d]!)));
      variance.push(spread.slice());
    }
    start.push(weight.length);
  }
  return makeMixtureBank(
    dims,
    Int32Array.from(start),
    Float64Array.from(weight),
    join(mean, dims),
    join(variance, dims),
  );
}

function join(rows: readonly Float64Array[], width: number): Float64Array {
  const all = new Float64Array(rows.length * width);
  rows.forEach((row, i) => {
    all.set(row, i * width);
  });
  return all;
}
