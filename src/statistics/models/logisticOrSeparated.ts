import type { LogisticCounts } from "./checkLogistic.ts";
import type { Design } from "./designMatrix.ts";
import { logisticNewton, type NewtonResult } from "./logisticNewton.ts";
import { separatedCombinations, separatedLevels } from "./separatedLevels.ts";

/** Log odds beyond which a row is looked at for separation: chances under 1 in 20,000. */
const suspiciousLogOdds = 10;

/** The maximum-likelihood fit, or in words what the terms predict without exception, so that there is none. */
export function logisticOrSeparated(
  design: Design,
  { successes, trials }: LogisticCounts,
): { readonly newton: NewtonResult } | { readonly separated: readonly string[] } {
  const levels = separatedLevels(design, successes, trials);
  if (levels.length > 0) return { separated: levels };
  const newton = logisticNewton(design.matrix, successes, trials);
  if (newton.converged && newton.eta.every((eta) => Math.abs(eta) < suspiciousLogOdds)) return { newton };
  const separated = separatedCombinations(design, successes, trials, newton.eta, suspiciousLogOdds);
  return separated.length > 0 ? { separated } : { newton };
}
