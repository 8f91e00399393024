import { aliasedCoefficient, constantColumn, noRowsLeft, referenceMissing } from "../../messages/models.ts";
import { dependentColumns } from "../linearAlgebra/dependentColumns.ts";
import { type SparseRows, weightedGram } from "../linearAlgebra/sparseRows.ts";
import { codeFactor } from "./codeFactor.ts";
import { codeTerms, withoutColumns } from "./codeTerms.ts";
import { type CodedTerm, encodeRows } from "./encodeRows.ts";
import { type CannotBeEstimated, cannotBeEstimated } from "./outcome.ts";
import { selectRows } from "./selectRows.ts";
import type { Coefficient, Covariate, DataColumn, Factor, Term } from "./term.ts";

/** A model formula applied to columns. Row i of `matrix` is row `rows[i]` of the columns it came from. */
export interface Design {
  readonly rows: Uint32Array;
  readonly matrix: SparseRows;
  readonly coefficients: readonly Coefficient[];
  readonly factors: readonly Factor[];
  readonly covariates: readonly Covariate[];
  readonly terms: readonly CodedTerm[];
  readonly notices: readonly string[];
}

export interface DesignOptions {
  /** Default true. */
  readonly intercept?: boolean;
  /** Tokens of each row; rows without tokens are left out silently. Default: every row counts. */
  readonly counts?: ArrayLike<number>;
}

/**
 * Design matrix of `terms` over `columns` in treatment coding. Rows with an unknown value in a used column,
 * columns with one value and coefficients that follow from earlier ones are left out, each with a notice.
 * A term that names no column is a mistake of the caller and throws.
 */
export function designMatrix(
  columns: Readonly<Record<string, DataColumn>>,
  terms: readonly Term[],
  options: DesignOptions = {},
): { readonly status: "ok"; readonly design: Design } | CannotBeEstimated {
  const intercept = options.intercept ?? true;
  const names = [...new Set(terms.flatMap((term) => ("column" in term ? [term.column] : term.interaction)))];
  const size = rowCount(columns, names, options.counts);
  const { rows, notices } = selectRows(columns, names, size, options.counts);
  if (rows.length === 0) return cannotBeEstimated(noRowsLeft(), notices);

  const factors = new Map<string, Factor>();
  const covariates = new Map<string, Covariate>();
  for (const name of names) {
    const column = columns[name]!;
    if (column instanceof Float64Array) {
      const values = Float64Array.from(rows, (i) => column[i]!);
      if (intercept && values.every((value) => value === values[0]))
        notices.push(constantColumn(name, String(values[0])));
      else covariates.set(name, { column: name, values });
      continue;
    }
    const reference = terms.find(
      (term) => "column" in term && term.column === name && term.reference !== undefined,
    );
    const wanted = reference && "column" in reference ? reference.reference : undefined;
    const factor = codeFactor(name, column, rows, wanted);
    if ("present" in factor)
      return cannotBeEstimated(referenceMissing(name, wanted!, factor.present), notices);
    if (factor.levels.length === 1) notices.push(constantColumn(name, factor.levels[0]!));
    else factors.set(name, factor);
  }

  const { coded, coefficients } = codeTerms(terms, factors, covariates, intercept);
  const aliased = aliasedColumns(terms, factors, covariates, intercept, rows.length);
  const kept = withoutColumns(coded, aliased);
  const left = coefficients.filter((_, j) => !aliased.includes(j));
  for (const j of aliased) notices.push(aliasedCoefficient(coefficients[j]!.name));
  return {
    status: "ok",
    design: {
      rows,
      matrix: encodeRows(rows.length, left.length, kept),
      coefficients: left,
      factors: [...factors.values()],
      covariates: [...covariates.values()],
      terms: kept,
      notices,
    },
  };
}

function rowCount(
  columns: Readonly<Record<string, DataColumn>>,
  names: readonly string[],
  counts?: ArrayLike<number>,
) {
  const sizes = names.map((name) => {
    const column = columns[name];
    if (!column) throw new Error(`no column ${name}; there are ${Object.keys(columns).join(", ")}`);
    return column instanceof Float64Array ? column.length : column.codes.length;
  });
  if (counts) sizes.push(counts.length);
  if (sizes.length === 0) throw new Error("a model without terms needs options.counts to know its rows");
  if (sizes.some((size) => size !== sizes[0]))
    throw new Error(`columns differ in length: ${sizes.join(", ")}`);
  return sizes[0]!;
}

/** Judged on scaled covariates, centred where that spans the same space, so that units and offsets do not matter. */
function aliasedColumns(
  terms: readonly Term[],
  factors: ReadonlyMap<string, Factor>,
  covariates: ReadonlyMap<string, Covariate>,
  intercept: boolean,
  rows: number,
): number[] {
  const centre = intercept && terms.every((term) => "column" in term);
  const scaled = new Map(
    [...covariates].map(([name, { column, values }]) => [
      name,
      { column, values: standardise(values, centre) },
    ]),
  );
  const { coded, coefficients } = codeTerms(terms, factors, scaled, intercept);
  const matrix = encodeRows(rows, coefficients.length, coded);
  return dependentColumns(weightedGram(matrix, new Float64Array(rows).fill(1)), coefficients.length);
}

function standardise(values: Float64Array, centre: boolean): Float64Array {
  const mean = centre ? values.reduce((sum, value) => sum + value / values.length, 0) : 0;
  const length = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2 / values.length, 0));
  return values.map((value) => (value - mean) / (length || 1));
}
