import { betaQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";

/**
 * Exact interval of a proportion, `successes` of `n` independent trials; holds the truth at least `level` of the time.
 * `n` may be an effective sample size and not whole.
 * Source: Clopper C. J. & Pearson E. S. (1934) Biometrika 26:404–413, by quantiles of the beta distribution.
 */
export function exactInterval(successes: number, n: number, level = 0.95): Interval {
  const tail = (1 - level) / 2;
  return {
    low: successes <= 0 ? 0 : betaQuantile(tail, successes, n - successes + 1),
    high: successes >= n ? 1 : betaQuantile(1 - tail, successes + 1, n - successes),
  };
}
