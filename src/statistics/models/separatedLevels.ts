import { separatedCombination, separatedLevel } from "../../messages/models.ts";
import type { Design } from "./designMatrix.ts";
import { type SeparatingDirection, separation } from "./separation.ts";

/** Levels of which none or all tokens are marked, in words. Any of them makes its odds ratio infinite. */
export function separatedLevels(design: Design, successes: Float64Array, trials: Float64Array): string[] {
  const found: string[] = [];
  for (const factor of design.factors) {
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

/** Separation by a combination of terms, in words; empty when none was found. */
export function separatedCombinations(
  design: Design,
  successes: Float64Array,
  trials: Float64Array,
  settledRow: (row: number) => boolean,
): string[] {
  const found = separation(design.matrix, successes, trials, settledRow);
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
