import { clusteredMean } from "../statistics/clusteredMean.ts";
import type { Variation } from "./neededData.ts";
import { type Stratum, speakerDifferences } from "./pairedRatio.ts";

/** Variation of a devoicing rate from the speakers' counts, for `speakersNeeded` and `tokensNeeded`; null below two speakers. */
export function rateVariation(marked: ArrayLike<number>, devoiced: ArrayLike<number>): Variation | null {
  if (marked.length < 2) return null;
  let tokens = 0;
  let hits = 0;
  for (let k = 0; k < marked.length; k++) {
    tokens += marked[k]!;
    hits += devoiced[k]!;
  }
  const token = (hits / tokens) * (1 - hits / tokens);
  const values = Float64Array.from(marked, (n, k) => devoiced[k]! / n);
  const within = Float64Array.from(marked, (n) => token / n);
  return { between: clusteredMean({ values, weights: marked, within }).between, token };
}

/**
 * Variation of the log of a duration ratio; `token` is per long token with short ones as plentiful as here. For ± 10 %
 * of a ratio ask for a half-width of ln 1.1. Null below two speakers or without spread.
 */
export function ratioVariation(strata: readonly Stratum[]): Variation | null {
  const differences = speakerDifferences(strata);
  if (differences === null || differences.speakers.length < 2) return null;
  const { values, weights, within, all } = differences;
  const longTokens = strata.reduce((sum, { long }) => sum + long.tokens, 0);
  return { between: clusteredMean({ values, weights, within }).between, token: all.variance * longTokens };
}
