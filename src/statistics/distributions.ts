import betainc from "@stdlib/math-base-special-betainc";
import erfc from "@stdlib/math-base-special-erfc";
import betaQuantileOf from "@stdlib/stats-base-dists-beta-quantile";
import normalQuantileOf from "@stdlib/stats-base-dists-normal-quantile";
import tQuantileOf from "@stdlib/stats-base-dists-t-quantile";

// The distribution functions themselves come from stdlib; here they only get the arguments we need.

/** Quantile of the standard normal distribution; `p` in (0, 1). */
export function normalQuantile(p: number): number {
  return normalQuantileOf(p, 0, 1);
}

/** P(Z ≤ z) of the standard normal distribution. */
export function normalCdf(z: number): number {
  return erfc(-z * Math.SQRT1_2) / 2;
}

/** Density of the standard normal distribution. */
export function normalDensity(z: number): number {
  return Math.exp(-z * z * 0.5) / Math.sqrt(2 * Math.PI);
}

/** Quantile of Student's t; `df` > 0, not necessarily whole. Above a million degrees of freedom it is the normal quantile. */
export function tQuantile(p: number, df: number): number {
  return df > 1e6 ? normalQuantile(p) : tQuantileOf(p, df);
}

/** P(|T| ≥ |t|) of Student's t: the two-sided p-value. */
export function tTwoSidedP(t: number, df: number): number {
  if (df > 1e6) return erfc(Math.abs(t) * Math.SQRT1_2);
  return betainc(df / (df + t * t), df / 2, 0.5);
}

/** Quantile of the beta distribution; `a`, `b` > 0. */
export function betaQuantile(p: number, a: number, b: number): number {
  return betaQuantileOf(p, a, b);
}

/** Half-width multiplier of a two-sided normal interval: 1.96 for `level` 0.95. */
export function normalMultiplier(level: number): number {
  return normalQuantile((1 + level) / 2);
}

/** Half-width multiplier of a two-sided t interval. */
export function tMultiplier(level: number, df: number): number {
  return tQuantile((1 + level) / 2, df);
}
