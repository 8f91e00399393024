import { perfectFit, valueNotFinite } from "../../messages/models.ts";
import { leastSquares } from "../linearAlgebra/leastSquares.ts";
import type { SparseRows } from "../linearAlgebra/sparseRows.ts";
import type { Design } from "./designMatrix.ts";
import { cannotBeEstimated, type Outcome } from "./outcome.ts";
import type { RegressionFit } from "./regressionFit.ts";
import { type ResponseOptions, responseOfRows } from "./responseOfRows.ts";

export interface LinearFit extends RegressionFit {
  readonly residualSd: number;
  readonly residualDf: number;
  /** Share of the variation about the mean (about 0 without an intercept) that the terms explain, 0 to 1. */
  readonly rSquared: number;
}

export interface LinearOptions extends ResponseOptions {
  /** Precision of each token of the row (inverse variance up to a factor). Default 1. */
  readonly weights?: ArrayLike<number>;
}

/** Ordinary or weighted least squares of `response` (one value a row of the columns; `design.rows` picks from it). */
export function fitLinear(
  design: Design,
  response: ArrayLike<number>,
  options: LinearOptions = {},
): Outcome<LinearFit> {
  const { rows, notices, coefficients: terms } = design;
  const found = responseOfRows(design, response, options);
  if ("reason" in found) return cannotBeEstimated(found.reason, notices);
  const { values: y, counts, tokens } = found;
  const precision = Float64Array.from(rows, (row) => options.weights?.[row] ?? 1);
  for (const [i, value] of precision.entries())
    if (!(value > 0 && value < Number.POSITIVE_INFINITY))
      return cannotBeEstimated(valueNotFinite("The weight (above 0)", rows[i]!, value), notices);
  const weights = counts.map((count, i) => count * precision[i]!);
  const insideCells = sum(found.within.map((value, i) => value * precision[i]!));

  const roots = weights.map(Math.sqrt);
  const solution = leastSquares(
    denseScaled(design.matrix, roots),
    y.map((value, i) => value * roots[i]!),
  );
  const residualSumOfSquares = solution.residualSumOfSquares + insideCells;
  const total = totalSumOfSquares(y, weights, terms[0]?.parts.length === 0) + insideCells;
  if (residualSumOfSquares <= 1e-28 * total) return cannotBeEstimated(perfectFit(), notices);
  const residualDf = tokens - solution.rank;
  const variance = residualSumOfSquares / residualDf;
  const fit: LinearFit = {
    design,
    coefficients: solution.coefficients,
    covariance: solution.unscaledCovariance.map((value) => value * variance),
    bread: solution.unscaledCovariance,
    workingWeights: weights,
    scoreResiduals: solution.residuals.map((value, i) => value * roots[i]!),
    counts,
    tokens,
    residualSd: Math.sqrt(variance),
    residualDf,
    rSquared: 1 - residualSumOfSquares / total,
  };
  return { status: "ok", fit, notices };
}

function denseScaled(matrix: SparseRows, factors: Float64Array) {
  const { rows, columns, start, column, value } = matrix;
  const values = new Float64Array(rows * columns);
  for (let i = 0; i < rows; i++)
    for (let k = start[i]!; k < start[i + 1]!; k++) values[column[k]! * rows + i] = value[k]! * factors[i]!;
  return { rows, columns, values };
}

function totalSumOfSquares(y: Float64Array, weights: Float64Array, aboutMean: boolean): number {
  const mean = aboutMean ? y.reduce((total, value, i) => total + value * weights[i]!, 0) / sum(weights) : 0;
  return y.reduce((total, value, i) => total + weights[i]! * (value - mean) ** 2, 0);
}

const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
