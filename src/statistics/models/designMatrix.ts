import { aliasedCoefficient, constantColumn, noRowsLeft, referenceMissing } from "../../messages/models.ts";
import { dependentColumns } from "../linearAlgebra/dependentColumns.ts";
import { type SparseRows, transposeMultiply, weightedGram } from "../linearAlgebra/sparseRows.ts";
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
  /** Further columns that must be known, such as the word of a random intercept. Default none. */
  readonly known?: readonly string[];
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
  const needed = [...new Set([...names, ...(options.known ?? [])])];
  const size = rowCount(columns, needed, options.counts);
  const { rows, notices } = selectRows(columns, needed, size, options.counts);
  if (rows.length === 0) return cannotBeEstimated(noRowsLeft(), notices);

  const factors = new Map<string, Factor>();
  const covariates = new Map<string, Covariate>();
  for (const name of names) {
    const column = columns[name]!;
    if (column instanceof Float64Array) {
      const values = new Float64Array(rows.length);
      for (let i = 0; i < rows.length; i++) values[i] = column[rows[i]!]!;
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
  const matrix = encodeRows(rows.length, coefficients.length, coded);
  const additive = terms.every((term) => "column" in term);
  const aliased = aliasedColumns(matrix, intercept && additive ? coefficients : []);
  const kept = withoutColumns(coded, aliased);
  const left = coefficients.filter((_, j) => !aliased.includes(j));
  for (const j of aliased) notices.push(aliasedCoefficient(coefficients[j]!.name));
  return {
    status: "ok",
    design: {
      rows,
      matrix: aliased.length === 0 ? matrix : encodeRows(rows.length, left.length, kept),
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

/** Judged with the numeric columns of `centred` about their mean, so that an offset does not hide what they add. */
function aliasedColumns(matrix: SparseRows, centred: readonly Coefficient[]): number[] {
  const { rows, columns, column, value } = matrix;
  const ones = new Float64Array(rows).fill(1);
  const means = transposeMultiply(matrix, ones).map((sum, j) => {
    const parts = centred[j]?.parts ?? [];
    return parts.length === 1 && parts[0]!.level === null ? sum / rows : 0;
  });
  const shifted = new Float64Array(value.length);
  for (let k = 0; k < value.length; k++) shifted[k] = value[k]! - means[column[k]!]!;
  return dependentColumns(weightedGram({ ...matrix, value: shifted }, ones), columns);
}
