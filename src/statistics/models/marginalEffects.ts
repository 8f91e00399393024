import { multiply, transposeMultiply } from "../linearAlgebra/sparseRows.ts";
import { quadraticForm } from "../linearAlgebra/square.ts";
import { bernoulliMoments } from "./bernoulli.ts";
import { halfWidth } from "./coefficientTable.ts";
import type { Design } from "./designMatrix.ts";
import { encodeRows, type Intervention } from "./encodeRows.ts";
import type { LogisticFit } from "./fitLogistic.ts";

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

/**
 * Average marginal effects in percentage points with delta-method intervals. For a level: mean over tokens of the
 * rate with every token moved to it, minus the same at the reference. For a number: mean slope of the rate.
 * `covariance` is the fit's own or a clustered one.
 */
export function marginalEffects(
  fit: LogisticFit,
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

function meanRate(fit: LogisticFit, intervention: Intervention): Mean {
  const rows = moved(fit.design, intervention);
  const eta = multiply(rows, fit.coefficients);
  const expected = new Float64Array(eta.length);
  const weights = new Float64Array(eta.length);
  bernoulliMoments(fit.counts, eta, expected, weights);
  return {
    value: expected.reduce((sum, value) => sum + value, 0) / fit.tokens,
    gradient: transposeMultiply(rows, weights).map((value) => value / fit.tokens),
  };
}

/** d rate/dx = p(1−p)·s with s = dη/dx; its gradient is p(1−p)(1−2p)·s·x + p(1−p)·∂s. */
function meanSlope(fit: LogisticFit, column: string): Mean {
  const { design, tokens, workingWeights } = fit;
  const along = moved(design, { slopeOf: column });
  const slope = multiply(along, fit.coefficients);
  const eta = multiply(design.matrix, fit.coefficients);
  const bend = new Float64Array(eta.length);
  let value = 0;
  for (let i = 0; i < eta.length; i++) {
    const p = 1 / (1 + Math.exp(-eta[i]!));
    const weight = workingWeights[i]!;
    value += weight * slope[i]!;
    bend[i] = weight * (1 - 2 * p) * slope[i]!;
  }
  const direct = transposeMultiply(along, workingWeights);
  return {
    value: value / tokens,
    gradient: transposeMultiply(design.matrix, bend).map((g, j) => (g + direct[j]!) / tokens),
  };
}
