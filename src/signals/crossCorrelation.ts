import { createProducts } from "./kernel/products.ts";

export interface CorrelatorOptions {
  readonly sampleRateHz: number;
  /** Length of each of the two compared stretches in ms. 20 holds one period of 50 Hz and still resolves a 30 ms vowel. */
  readonly windowMs: number;
  readonly minHz: number;
  readonly maxHz: number;
}

export interface Correlator {
  readonly lagMin: number;
  readonly lagMax: number;
  /** Correlation at each lag of the last call, index = lag − lagMin; reused. */
  readonly correlation: Float64Array;
  /** Fills `correlation` around sample `centre` (may be fractional); stretches that leave the signal give 0. */
  measure(samples: Float32Array, centre: number, energyFloor: number): void;
}

/**
 * Normalised cross-correlation of two stretches that lie `lag` samples apart and symmetrically about the frame's centre:
 * Σ x[i]·x[i+lag] / √(Σ x[i]² · Σ x[i+lag]²), −1 … 1 (Atal 1968; Talkin 1995, from memory). Unlike a windowed
 * autocorrelation it needs no taper correction and keeps its time resolution at short lags.
 * `energyFloor` is added to both energies, so that what lies far below it counts as aperiodic.
 */
export function createCorrelator(options: CorrelatorOptions): Correlator {
  const { sampleRateHz, windowMs, minHz, maxHz } = options;
  const width = Math.round((windowMs * sampleRateHz) / 1000);
  const lagMin = Math.max(2, Math.floor(sampleRateHz / maxHz) - 1);
  const lagMax = Math.ceil(sampleRateHz / minHz) + 1;
  const lags = lagMax - lagMin + 1;
  const correlation = new Float64Array(lags);
  const span = width + lagMax + 1;
  const squares = new Float64Array(span + 1);
  const products = createProducts(span + lags);
  const local = products.numbers.subarray(0, span);
  const sums = products.numbers.subarray(span);

  function measure(samples: Float32Array, centre: number, energyFloor: number): void {
    const origin = Math.round(centre) - (span >> 1);
    if (origin < 0 || origin + span > samples.length) {
      for (let i = 0; i < span; i++) local[i] = samples[origin + i] ?? 0;
    } else {
      for (let i = 0; i < span; i++) local[i] = samples[origin + i]!;
    }
    let sum = 0;
    for (let i = 0; i < span; i++) {
      squares[i] = sum;
      sum += local[i]! * local[i]!;
    }
    squares[span] = sum;
    products.lagDots(0, span, width, lagMin, lagMax, span);
    for (let lag = lagMin; lag <= lagMax; lag++) {
      const first = (span - width - lag) >> 1;
      const second = first + lag;
      const a = squares[first + width]! - squares[first]! + energyFloor;
      const b = squares[second + width]! - squares[second]! + energyFloor;
      correlation[lag - lagMin] = a > 0 && b > 0 ? sums[lag - lagMin]! / Math.sqrt(a * b) : 0;
    }
  }
  return { lagMin, lagMax, correlation, measure };
}
