import type { Design } from "./designMatrix.ts";

/** How much one grouping contributes. */
export interface GroupVariance {
  /** What the groups are: speaker, word. */
  readonly unit: string;
  readonly groups: number;
  readonly variance: number;
  readonly standardDeviation: number;
  /** Share of the whole variation that the terms leave, 0 to 1. Logistic models count π²/3 for the single token. */
  readonly share: number;
  /** Most likely intercept of each group, in the scale of the model, beside `labels`. */
  readonly modes: Float64Array;
  readonly labels: readonly (string | null)[];
}

/** A model with random intercepts. Matrices are coefficients × coefficients, row after row. */
export interface MixedFit {
  readonly design: Design;
  readonly method: string;
  readonly coefficients: Float64Array;
  readonly covariance: Float64Array;
  /** Degrees of freedom for the t interval of a contrast of coefficients, by containment. */
  readonly degreesOfFreedom: (contrast: ArrayLike<number>) => number;
  readonly groupings: readonly GroupVariance[];
  /** Variance of a single token about its expectation: estimated for durations, π²/3 on the scale of log odds. */
  readonly residualVariance: number;
  readonly residualShare: number;
  readonly logLikelihood: number;
  readonly tokens: number;
  /** Tokens of each design row. */
  readonly counts: Float64Array;
  readonly iterations: number;
}
