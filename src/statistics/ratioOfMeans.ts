import type { Interval } from "./interval.ts";

/** Two estimated means with their variances and covariance; `numerator / denominator` is the ratio wanted. */
export interface MeanPair {
  readonly numerator: number;
  readonly denominator: number;
  readonly numeratorVariance: number;
  readonly denominatorVariance: number;
  readonly covariance: number;
}

/** Standard error of a ratio of means by the delta method (first-order Taylor expansion). */
export function deltaRatioError(pair: MeanPair): number {
  const { numerator: a, denominator: b } = pair;
  const variance =
    pair.numeratorVariance / b ** 2 +
    (a ** 2 * pair.denominatorVariance) / b ** 4 -
    (2 * a * pair.covariance) / b ** 3;
  return Math.sqrt(Math.max(0, variance));
}

/** Ratio ± `multiplier` × delta-method error. Symmetric, so too short upwards when the denominator is uncertain. */
export function deltaRatioInterval(pair: MeanPair, multiplier: number): Interval {
  const ratio = pair.numerator / pair.denominator;
  const half = multiplier * deltaRatioError(pair);
  return { low: ratio - half, high: ratio + half };
}

/**
 * Interval of a ratio of means that keeps its level when the denominator is uncertain; `multiplier` is the
 * normal or t multiplier. `g` measures how uncertain the denominator is: from g ≥ 1 it may be zero,
 * no bounded interval exists and the bounds are null.
 * Source: Fieller E. C. (1954) JRSS-B 16:175–185.
 */
export function fiellerInterval(
  pair: MeanPair,
  multiplier: number,
): { low: number | null; high: number | null; g: number } {
  const {
    numerator: a,
    denominator: b,
    numeratorVariance: va,
    denominatorVariance: vb,
    covariance: c,
  } = pair;
  const t2 = multiplier ** 2;
  const g = (t2 * vb) / b ** 2;
  if (!(g < 1)) return { low: null, high: null, g };
  const ratio = a / b;
  const centre = vb === 0 ? ratio : ratio - (g * c) / vb;
  const inside = va - 2 * ratio * c + ratio ** 2 * vb - g * (va - (vb === 0 ? 0 : c ** 2 / vb));
  const half = (multiplier / Math.abs(b)) * Math.sqrt(Math.max(0, inside));
  return { low: (centre - half) / (1 - g), high: (centre + half) / (1 - g), g };
}
