import type { LogisticCounts } from "./checkLogistic.ts";
import type { Design } from "./designMatrix.ts";
import { logisticNewton, type NewtonResult } from "./logisticNewton.ts";
import { separatedCombinations, separatedLevels } from "./separatedLevels.ts";

/** Log odds beyond which a row is looked at for separation: chances under 1 in 20,000. */
const suspiciousLogOdds = 10;

/** What the terms predict without exception: in words, and the coefficients that have no finite estimate for it. */
export interface Separated {
  readonly texts: readonly string[];
  readonly coefficients: readonly number[];
}

/** The maximum-likelihood fit, or what the terms predict without exception, so that there is none. */
export function logisticOrSeparated(
  design: Design,
  { successes, trials }: LogisticCounts,
): { readonly newton: NewtonResult } | { readonly separated: Separated } {
  const levels = separatedLevels(design, successes, trials);
  const newton = logisticNewton(design.matrix, successes, trials);
  const suspicious = !newton.converged || newton.eta.some((eta) => Math.abs(eta) >= suspiciousLogOdds);
  if (levels.length === 0 && !suspicious) return { newton };
  const { texts, coefficients } = separatedCombinations(
    design,
    successes,
    trials,
    newton.eta,
    suspiciousLogOdds,
  );
  if (levels.length > 0) return { separated: { texts: levels, coefficients } };
  return texts.length > 0 ? { separated: { texts, coefficients } } : { newton };
}
