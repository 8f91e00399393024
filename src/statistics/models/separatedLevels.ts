import { separatedCombination, separatedLevel } from "../../messages/models.ts";
import type { Design } from "./designMatrix.ts";
import { type SeparatingDirection, separation } from "./separation.ts";
import type { Factor } from "./term.ts";

/**
 * Levels of which none or all tokens are marked, in words; any of them makes its odds ratio infinite. Only factors
 * with coefficients of their own beside an intercept are judged, since for others it does not follow.
 */
export function separatedLevels(design: Design, successes: Float64Array, trials: Float64Array): string[] {
  const found: string[] = [];
  for (const factor of design.factors) {
    if (!standsAlone(design, factor)) continue;
    const marked = new Float64Array(factor.levels.length);
    const tokens = new Float64Array(factor.levels.length);
    for (let i = 0; i < factor.codes.length; i++) {
      marked[factor.codes[i]!]! += successes[i]!;
      tokens[factor.codes[i]!]! += trials[i]!;
    }
    for (const [k, level] of factor.levels.entries())
      if (tokens[k]! > 0 && (marked[k] === 0 || marked[k] === tokens[k]))
        found.push(separatedLevel(factor.column, level, marked[k]!, tokens[k]!));
  }
  return found;
}

function standsAlone(design: Design, factor: Factor): boolean {
  if (design.coefficients[0]?.parts.length !== 0) return false;
  return design.terms.some(
    ({ factors, covariates, columnOfCombination }) =>
      factors.length === 1 &&
      factors[0] === factor &&
      covariates.length === 0 &&
      columnOfCombination.every((column) => column >= 0),
  );
}

/** Separation by a combination of terms, in words; empty when none was found. See `separation` for `eta`. */
export function separatedCombinations(
  design: Design,
  successes: Float64Array,
  trials: Float64Array,
  eta: Float64Array,
  settled: number,
): string[] {
  const found = separation(design.matrix, successes, trials, eta, settled);
  if (!found) return [];
  const tokens = found.rows.reduce((sum, i) => sum + trials[i]!, 0);
  return [separatedCombination(namesAlong(design, found), tokens)];
}

function namesAlong(design: Design, { direction }: SeparatingDirection): string[] {
  const largest = direction.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return design.coefficients
    .filter((_, j) => Math.abs(direction[j]!) > 1e-6 * largest)
    .map(({ name }) => name);
}
