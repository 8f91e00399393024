import type { CodedTerm } from "./encodeRows.ts";
import type { Coefficient, Covariate, Factor, Term } from "./term.ts";

/** Coded terms over the given factors and covariates, and the coefficients in column order. */
export function codeTerms(
  terms: readonly Term[],
  factors: ReadonlyMap<string, Factor>,
  covariates: ReadonlyMap<string, Covariate>,
  intercept: boolean,
): { coded: CodedTerm[]; coefficients: Coefficient[] } {
  const coded: CodedTerm[] = [];
  const coefficients: Coefficient[] = [];
  if (intercept) {
    coded.push({ factors: [], covariates: [], columnOfCombination: Int32Array.of(0) });
    coefficients.push({ name: "(Intercept)", parts: [] });
  }
  for (const term of terms) {
    const names = "column" in term ? [term.column] : term.interaction;
    const own = names.flatMap((name) => factors.get(name) ?? []);
    const numbers = names.flatMap((name) => covariates.get(name) ?? []);
    if (own.length + numbers.length < names.length) continue;
    const combinations = own.reduce((product, factor) => product * (factor.levels.length - 1), 1);
    const columnOfCombination = Int32Array.from({ length: combinations }, (_, k) => coefficients.length + k);
    for (let k = 0; k < combinations; k++) coefficients.push(coefficientOf(names, own, k));
    coded.push({ factors: own, covariates: numbers, columnOfCombination });
  }
  return { coded, coefficients };
}

/** The same terms without the given design columns; the columns left close up. */
export function withoutColumns(coded: readonly CodedTerm[], dropped: readonly number[]): CodedTerm[] {
  return coded.map((term) => ({
    ...term,
    columnOfCombination: term.columnOfCombination.map((column) =>
      dropped.includes(column) ? -1 : column - dropped.filter((other) => other < column).length,
    ),
  }));
}

function coefficientOf(
  names: readonly string[],
  factors: readonly Factor[],
  combination: number,
): Coefficient {
  let rest = combination;
  const levelOf = new Map<string, string>();
  for (const factor of factors) {
    const choices = factor.levels.length - 1;
    levelOf.set(factor.column, factor.levels[1 + (rest % choices)]!);
    rest = Math.floor(rest / choices);
  }
  const parts = names.map((column) => ({ column, level: levelOf.get(column) ?? null }));
  return {
    name: parts.map(({ column, level }) => (level === null ? column : `${column}=${level}`)).join(" × "),
    parts,
  };
}
