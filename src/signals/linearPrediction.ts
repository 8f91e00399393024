import { cholesky, choleskySolve } from "../statistics/linearAlgebra/cholesky.ts";
import { createProducts } from "./kernel/products.ts";

/** Scratch space of one prediction order and longest frame; make it once and reuse it. */
export interface Predictor {
  readonly order: number;
  /** Coefficients a₁ … a_p of the last call: x[n] ≈ −Σ a_k·x[n−k]. Reused. */
  readonly coefficients: Float64Array;
  /** Predicts the first `count` values of `frame`; false when the frame holds nothing to predict. */
  fit(frame: Float64Array, count: number): boolean;
}

/** Rounds of fitting, each but the first with weights from the last; a fourth changes little. */
const rounds = 3;
/** Smallest residual that still counts more than others, as a share of the usual one. */
const softening = 0.05;

/**
 * Linear prediction by the covariance method with two weights a sample, so that the few samples the glottis drives do
 * not pull the resonances towards the harmonics of a high voice: the energy just before it, which is highest while the
 * glottis is closed (Ma C., Kamp Y. & Willems L. F. 1993, Speech Comm. 12:69–81), and the inverse of the largest
 * residual from one sample ahead to three behind (towards least absolute error; Lee C.-H. 1988, IEEE Trans. ASSP
 * 36:642–650; both from memory). A ridge of 1e−9 of the energy keeps pure tones solvable.
 */
export function createPredictor(order: number, longest: number): Predictor {
  const coefficients = new Float64Array(order);
  const energies = new Float64Array(longest);
  const residuals = new Float64Array(longest);
  const matrix = new Float64Array(order * order);
  const right = new Float64Array(order);
  const stride = (order + 1 + 7) & ~7;
  const products = createProducts(longest + stride + longest + stride * stride);
  const samples = products.numbers.subarray(0, longest + stride);
  const weights = products.numbers.subarray(samples.length, samples.length + longest);
  const sums = products.numbers.subarray(samples.length + longest);

  /** Of the products of the samples n − order … n, the latest is the one to predict. */
  function accumulate(frame: Float64Array, count: number): number {
    for (let n = 0; n < count; n++) samples[n] = frame[n]!;
    samples.fill(0, count);
    const from = samples.length + order;
    products.weightedProducts(0, from, count - order, order + 1, samples.length + longest);
    for (let i = 0; i < order; i++) {
      const row = order - 1 - i;
      right[i] = -sums[order * stride + row]!;
      for (let j = 0; j <= i; j++) matrix[i * order + j] = sums[(order - 1 - j) * stride + row]!;
    }
    return sums[order * stride + order]!;
  }

  function weighByEnergy(frame: Float64Array, count: number): void {
    let energy = 1e-12;
    for (let n = 0; n < count; n++) {
      energies[n] = energy;
      weights[n] = energy;
      energy += frame[n]! * frame[n]!;
      if (n >= order) energy = Math.max(1e-12, energy - frame[n - order]! * frame[n - order]!);
    }
  }

  function weighByResidual(frame: Float64Array, count: number): void {
    let total = 0;
    for (let n = order; n < count; n++) {
      let residual = frame[n]!;
      for (let k = 0; k < order; k++) residual += coefficients[k]! * frame[n - 1 - k]!;
      residuals[n] = Math.abs(residual);
      total += residuals[n]!;
    }
    const usual = total / (count - order);
    for (let n = order; n < count; n++) {
      let largest = residuals[n]!;
      if (n + 1 < count && residuals[n + 1]! > largest) largest = residuals[n + 1]!;
      for (let back = 1; back <= 3 && n - back >= order; back++) {
        if (residuals[n - back]! > largest) largest = residuals[n - back]!;
      }
      weights[n] = (energies[n]! * usual) / (largest + softening * usual);
    }
  }

  function fit(frame: Float64Array, count: number): boolean {
    if (count < 3 * order) return false;
    weighByEnergy(frame, count);
    for (let round = 0; round < rounds; round++) {
      if (round > 0) weighByResidual(frame, count);
      const energy = accumulate(frame, count);
      if (!(energy > 1e-30)) return false;
      for (let i = 0; i < order; i++) matrix[i * order + i]! += 1e-9 * energy;
      if (!cholesky(matrix, order)) return false;
      coefficients.set(right);
      choleskySolve(matrix, order, coefficients);
    }
    return true;
  }
  return { order, coefficients, fit };
}
