import type { SparseRows } from "../linearAlgebra/sparseRows.ts";
import type { Covariate, Factor } from "./term.ts";

/**
 * A term ready for coding: the product of factors and covariates. `columnOfCombination` gives the design column of
 * a combination of non-reference levels (first factor fastest), -1 where there is none.
 */
export interface CodedTerm {
  readonly factors: readonly Factor[];
  readonly covariates: readonly Covariate[];
  readonly columnOfCombination: Int32Array;
}

/** A question to the model: all rows moved to one level, or the slope along a covariate. */
export type Intervention = { readonly column: string; readonly level: number } | { readonly slopeOf: string };

/**
 * Design rows of the given terms, in term order; with an intervention, the rows as they would be under it (for a
 * slope: the derivative of each row along the covariate).
 */
export function encodeRows(
  rows: number,
  columns: number,
  terms: readonly CodedTerm[],
  intervention?: Intervention,
): SparseRows {
  const used = intervention && "slopeOf" in intervention ? terms.filter(has(intervention.slopeOf)) : terms;
  const start = new Uint32Array(rows + 1);
  const column = new Uint16Array(rows * used.length);
  const value = new Float64Array(rows * used.length);
  const prepared = used.map((term) => prepare(term, intervention));
  let size = 0;
  for (let i = 0; i < rows; i++) {
    for (const term of prepared) {
      const at = columnAt(term, i);
      if (at < 0) continue;
      let product = 1;
      for (const values of term.values) product *= values[i]!;
      column[size] = at;
      value[size++] = product;
    }
    start[i + 1] = size;
  }
  return { rows, columns, start, column: column.subarray(0, size), value: value.subarray(0, size) };
}

const has = (column: string) => (term: CodedTerm) =>
  term.covariates.some((covariate) => covariate.column === column);

interface Prepared {
  readonly codes: readonly Uint16Array[];
  /** Level that holds for all rows, or -1 to read `codes`. */
  readonly fixed: readonly number[];
  readonly strides: readonly number[];
  readonly values: readonly Float64Array[];
  readonly columnOfCombination: Int32Array;
}

function prepare(term: CodedTerm, intervention?: Intervention): Prepared {
  let stride = 1;
  const strides = term.factors.map((factor) => {
    const own = stride;
    stride *= factor.levels.length - 1;
    return own;
  });
  const moved = intervention && "level" in intervention ? intervention : null;
  const slopeOf = intervention && "slopeOf" in intervention ? intervention.slopeOf : null;
  return {
    codes: term.factors.map((factor) => factor.codes),
    fixed: term.factors.map((factor) => (factor.column === moved?.column ? moved.level : -1)),
    strides,
    values: term.covariates
      .filter((covariate) => covariate.column !== slopeOf)
      .map((covariate) => covariate.values),
    columnOfCombination: term.columnOfCombination,
  };
}

function columnAt(term: Prepared, i: number): number {
  let combination = 0;
  for (let f = 0; f < term.codes.length; f++) {
    const fixed = term.fixed[f]!;
    const code = fixed < 0 ? term.codes[f]![i]! : fixed;
    if (code === 0) return -1;
    combination += (code - 1) * term.strides[f]!;
  }
  return term.columnOfCombination[combination]!;
}
