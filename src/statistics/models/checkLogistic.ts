import { allTheSameOutcome, tooFewTokens } from "../../messages/models.ts";
import { countsOfRows } from "./countsOfRows.ts";
import type { Design } from "./designMatrix.ts";

export interface LogisticCounts {
  readonly successes: Float64Array;
  readonly trials: Float64Array;
  readonly tokens: number;
}

/** Counts of the design rows, or the reason why no logistic model can be fitted to them. */
export function checkLogistic(
  design: Design,
  successes: ArrayLike<number>,
  trials: ArrayLike<number>,
): LogisticCounts | { readonly reason: string } {
  const counts = countsOfRows(design, successes, trials);
  if ("reason" in counts) return counts;
  const tokens = counts.trials.reduce((sum, value) => sum + value, 0);
  const marked = counts.successes.reduce((sum, value) => sum + value, 0);
  if (tokens <= design.coefficients.length)
    return { reason: tooFewTokens(tokens, design.coefficients.length) };
  if (marked === 0 || marked === tokens) return { reason: allTheSameOutcome(marked, tokens) };
  return { ...counts, tokens };
}
