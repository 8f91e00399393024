import { multiply, transposeMultiply } from "../linearAlgebra/sparseRows.ts";
import { quadraticForm } from "../linearAlgebra/square.ts";
import { averagedChances } from "./averagedChances.ts";
import { halfWidth } from "./coefficientTable.ts";
import type { Design } from "./designMatrix.ts";
import { encodeRows, type Intervention } from "./encodeRows.ts";

/** What a level or a unit step does to the rate, averaged over the tokens of the model as they are. */
export interface MarginalEffect {
  readonly column: string;
  /** Level compared with `reference`; null for a numeric column, where the effect is per unit (a slope). */
  readonly level: string | null;
  readonly reference: string | null;
  readonly percentagePoints: number;
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
}

export interface MarginalEffectOptions {
  /** Share of intervals that should hold the truth. Default 0.95. */
  readonly level?: number;
  /** Degrees of freedom of the t intervals. Default Infinity: normal intervals. */
  readonly degreesOfFreedom?: number;
}

interface Mean {
  readonly value: number;
  readonly gradient: Float64Array;
}

/** What is needed of a fit; of a logistic regression or of a mixed one. */
export interface FittedRates {
  readonly design: Design;
  readonly coefficients: Float64Array;
  readonly counts: Float64Array;
  readonly tokens: number;
  /** Present in mixed models: rates are then averaged over speakers and words like those seen. */
  readonly groupings?: readonly { readonly variance: number }[];
}

/**
 * Average marginal effects in percentage points with delta-method intervals. For a level: mean over tokens of the
 * rate with every token moved to it, minus the same at the reference. For a number: mean slope of the rate.
 * `covariance` is the fit's own or a clustered one. In mixed models the spread of the intercepts is held as known.
 */
export function marginalEffects(
  fit: FittedRates,
  covariance: Float64Array,
  options: MarginalEffectOptions = {},
): MarginalEffect[] {
  const { design } = fit;
  const { level: share = 0.95, degreesOfFreedom = Number.POSITIVE_INFINITY } = options;
  const effect = (
    column: string,
    level: string | null,
    reference: string | null,
    mean: Mean,
  ): MarginalEffect => {
    const percentagePoints = 100 * mean.value;
    const standardError = 100 * Math.sqrt(Math.max(0, quadraticForm(covariance, mean.gradient)));
    const half = halfWidth(standardError, share, degreesOfFreedom);
    const [low, high] = [percentagePoints - half, percentagePoints + half];
    return { column, level, reference, percentagePoints, standardError, low, high };
  };
  const ofLevels = design.factors.flatMap(({ column, levels }) => {
    const reference = meanRate(fit, { column, level: 0 });
    return levels.slice(1).map((level, k) => {
      const moved = meanRate(fit, { column, level: k + 1 });
      const gradient = moved.gradient.map((value, j) => value - reference.gradient[j]!);
      return effect(column, level, levels[0]!, { value: moved.value - reference.value, gradient });
    });
  });
  const slopes = design.covariates.map(({ column }) => effect(column, null, null, meanSlope(fit, column)));
  return [...ofLevels, ...slopes];
}

function moved(design: Design, intervention: Intervention) {
  return encodeRows(design.rows.length, design.coefficients.length, design.terms, intervention);
}

function interceptSd(fit: FittedRates): number {
  return Math.sqrt((fit.groupings ?? []).reduce((sum, { variance }) => sum + variance, 0));
}

function meanRate(fit: FittedRates, intervention: Intervention): Mean {
  const rows = moved(fit.design, intervention);
  const { chance, slope } = averagedChances(multiply(rows, fit.coefficients), interceptSd(fit));
  let value = 0;
  for (let i = 0; i < chance.length; i++) {
    const share = fit.counts[i]! / fit.tokens;
    value += share * chance[i]!;
    slope[i]! *= share;
  }
  return { value, gradient: transposeMultiply(rows, slope) };
}

/** d rate/dx = p(1−p)·s with s = dη/dx; its gradient is p(1−p)(1−2p)·s·x + p(1−p)·∂s. */
function meanSlope(fit: FittedRates, column: string): Mean {
  const { design, counts, tokens, coefficients } = fit;
  const along = moved(design, { slopeOf: column });
  const steepness = multiply(along, coefficients);
  const { slope, bend } = averagedChances(multiply(design.matrix, coefficients), interceptSd(fit));
  let value = 0;
  for (let i = 0; i < slope.length; i++) {
    const share = counts[i]! / tokens;
    slope[i]! *= share;
    value += slope[i]! * steepness[i]!;
    bend[i]! *= share * steepness[i]!;
  }
  const direct = transposeMultiply(along, slope);
  return { value, gradient: transposeMultiply(design.matrix, bend).map((g, j) => g + direct[j]!) };
}
