import type { Design } from "./designMatrix.ts";

/**
 * What every regression without random intercepts leaves for errors, intervals and marginal effects.
 * Matrices are coefficients × coefficients, row after row.
 */
export interface RegressionFit {
  readonly design: Design;
  readonly coefficients: Float64Array;
  /** Covariance of the coefficients as if all tokens were independent. */
  readonly covariance: Float64Array;
  /** Inverse of XᵀWX with the working weights W. */
  readonly bread: Float64Array;
  /** Working weight of each design row (summed over its tokens). */
  readonly workingWeights: Float64Array;
  /** Observed minus expected of each design row, in the scale whose product with the row is its score. */
  readonly scoreResiduals: Float64Array;
  /** Tokens of each design row. */
  readonly counts: Float64Array;
  readonly tokens: number;
}
