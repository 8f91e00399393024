import { correctingError } from "../../../src/estimates/devoicingError.ts";
import type { RateRow } from "../../../src/estimates/rates.ts";
import type { Corpus } from "../corpus.ts";

/** How rates are estimated on the page: corrected for the decision's errors where those are known of these recordings. */
export function rateOptions({ level, error }: Corpus) {
  const accuracy = correctingError(error);
  return { level, ...(accuracy === undefined ? {} : { accuracy }) };
}

/** The corrected rate in per cent, to be drawn beside the one counted; null where there is none. */
export function correctedPercent({ corrected }: RateRow) {
  if (corrected === null) return null;
  const { estimate, low, high } = corrected;
  return { estimate: 100 * estimate, low: 100 * low, high: 100 * high };
}
