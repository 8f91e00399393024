import { normalCdf, normalDensity } from "./distributions.ts";

export interface CensoredSample {
  /** Values known only to lie at or below `limit`. */
  readonly censored: number;
  readonly limit: number;
  /** The others: how many, their sum and sum of squares. */
  readonly observed: number;
  readonly sum: number;
  readonly sumSquares: number;
}

/**
 * Mean and standard deviation (maximum likelihood) of a normal distribution of which small values are only known to
 * be small; null with fewer than two different observed values. Expectation-maximisation; the more is censored, the
 * more the result rests on the assumed shape. Source: Dempster A. P., Laird N. M. & Rubin D. B. (1977)
 * JRSS-B 39:1–38, section 4.2 (censored data).
 */
export function censoredNormal(
  sample: CensoredSample,
): { readonly mean: number; readonly sd: number } | null {
  const { censored, limit, observed, sum, sumSquares } = sample;
  if (observed < 2) return null;
  const n = observed + censored;
  let mean = sum / observed;
  let variance = sumSquares / observed - mean * mean;
  if (!(variance > 1e-12)) return null;
  for (let round = 0; round < 20_000; round++) {
    const sd = Math.sqrt(variance);
    const z = (limit - mean) / sd;
    const hazard = censoredHazard(z);
    const below = mean - sd * hazard;
    const belowSquares = variance * (1 - z * hazard - hazard * hazard) + below * below;
    const nextMean = (sum + censored * below) / n;
    const nextVariance = (sumSquares + censored * belowSquares) / n - nextMean * nextMean;
    const moved = Math.abs(nextMean - mean) + Math.abs(nextVariance - variance);
    mean = nextMean;
    variance = nextVariance;
    if (moved < 1e-12) break;
  }
  return { mean, sd: Math.sqrt(variance) };
}

/** φ(z) / Φ(z); far in the lower tail by the leading terms of Mills' ratio. */
function censoredHazard(z: number): number {
  return z < -30 ? -z - 1 / z : normalDensity(z) / normalCdf(z);
}
