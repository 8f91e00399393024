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

/** What terms together predict without exception. */
export interface SeparatedCombinations {
  /** In words; empty when nothing was found. */
  readonly texts: readonly string[];
  /** Coefficients that have no finite estimate, by their places in the design, ascending. */
  readonly coefficients: readonly number[];
}

/**
 * Separation by one or more combinations of terms: rows that one predicts are taken out and the rest is searched again.
 * See `separation` for `eta` and `settled`.
 */
export function separatedCombinations(
  design: Design,
  successes: Float64Array,
  trials: Float64Array,
  eta: Float64Array,
  settled: number,
): SeparatedCombinations {
  const left = trials.slice();
  const texts: string[] = [];
  const coefficients = new Set<number>();
  for (;;) {
    const found = separation(design.matrix, successes, left, eta, settled);
    if (!found) return { texts, coefficients: [...coefficients].sort((a, b) => a - b) };
    const moved = support(found);
    for (const j of moved) coefficients.add(j);
    const tokens = found.rows.reduce((sum, i) => sum + left[i]!, 0);
    texts.push(
      separatedCombination(
        moved.map((j) => design.coefficients[j]!.name),
        tokens,
      ),
    );
    for (const i of found.rows) left[i] = 0;
  }
}

function support({ direction }: SeparatingDirection): number[] {
  const largest = direction.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return Array.from(direction.keys()).filter((j) => Math.abs(direction[j]!) > 1e-6 * largest);
}
