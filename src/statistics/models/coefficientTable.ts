import { tMultiplier } from "../distributions.ts";
import type { Design } from "./designMatrix.ts";

/** One coefficient with its interval; the odds ratio fields are exp() of the others (for log durations: duration ratios). */
export interface CoefficientRow {
  readonly name: string;
  readonly estimate: number;
  readonly standardError: number;
  /** Bounds of the interval; infinite when the data say nothing about the error (0 degrees of freedom). */
  readonly low: number;
  readonly high: number;
  readonly ratio: number;
  readonly ratioLow: number;
  readonly ratioHigh: number;
  /** Degrees of freedom of the t interval; Infinity for a normal interval. */
  readonly degreesOfFreedom: number;
}

export interface CoefficientTableOptions {
  /** Share of intervals that should hold the truth. Default 0.95. */
  readonly level?: number;
  /** Degrees of freedom for a contrast of coefficients. Default: none, that is normal intervals. */
  readonly degreesOfFreedom?: (contrast: ArrayLike<number>) => number;
}

type Fitted = { readonly design: Design; readonly coefficients: Float64Array };

/** Coefficients of a fit with intervals from `covariance` (coefficients × coefficients): the fit's own or a clustered one. */
export function coefficientTable(
  fit: Fitted,
  covariance: Float64Array,
  options: CoefficientTableOptions = {},
): CoefficientRow[] {
  return fit.design.coefficients.map((_, j) => coefficientRow(fit, covariance, j, options));
}

/** One row of the table; degrees of freedom cost much where coefficients are many, and only one is asked for. */
export function coefficientRow(
  fit: Fitted,
  covariance: Float64Array,
  j: number,
  options: CoefficientTableOptions = {},
): CoefficientRow {
  const k = fit.coefficients.length;
  const estimate = fit.coefficients[j]!;
  const standardError = Math.sqrt(Math.max(0, covariance[j * k + j]!));
  const contrast = Float64Array.from({ length: k }, (_, other) => (other === j ? 1 : 0));
  const degreesOfFreedom = options.degreesOfFreedom?.(contrast) ?? Number.POSITIVE_INFINITY;
  const half = halfWidth(standardError, options.level ?? 0.95, degreesOfFreedom);
  const [low, high] = [estimate - half, estimate + half];
  return {
    name: fit.design.coefficients[j]!.name,
    ...{ estimate, standardError, low, high, degreesOfFreedom },
    ...{ ratio: Math.exp(estimate), ratioLow: Math.exp(low), ratioHigh: Math.exp(high) },
  };
}

/** Half width of a two-sided t interval; Infinity without degrees of freedom, when the data say nothing about the error. */
export function halfWidth(standardError: number, level: number, degreesOfFreedom: number): number {
  const half = degreesOfFreedom > 0 ? tMultiplier(level, degreesOfFreedom) * standardError : Number.NaN;
  return Number.isNaN(half) ? Number.POSITIVE_INFINITY : half;
}
