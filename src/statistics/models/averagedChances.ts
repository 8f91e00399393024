import { gaussHermite } from "./gaussHermite.ts";

/** Averages over a normal spread of log odds, one value a row: the chance p, p(1−p), and p(1−p)(1−2p). */
export interface AveragedChances {
  readonly chance: Float64Array;
  readonly slope: Float64Array;
  readonly bend: Float64Array;
}

const points = 40;

/** Averages over log odds `eta` + normal(0, `sd`), by Gauss–Hermite quadrature with 40 points; `sd` 0 means no spread. */
export function averagedChances(eta: Float64Array, sd: number): AveragedChances {
  const { nodes, weights } = gaussHermite(sd === 0 ? 1 : points);
  const chance = new Float64Array(eta.length);
  const slope = new Float64Array(eta.length);
  const bend = new Float64Array(eta.length);
  for (let q = 0; q < nodes.length; q++) {
    const shift = Math.SQRT2 * sd * nodes[q]!;
    const share = weights[q]! / Math.sqrt(Math.PI);
    for (let i = 0; i < eta.length; i++) {
      const x = eta[i]! + shift;
      const small = Math.exp(-Math.abs(x));
      const near = 1 / (1 + small);
      const spread = near * near * small;
      chance[i]! += share * (x > 0 ? near : small * near);
      slope[i]! += share * spread;
      bend[i]! += share * spread * (x > 0 ? small - 1 : 1 - small) * near;
    }
  }
  return { chance, slope, bend };
}
