import { compensatedDot } from "./compensatedDot.ts";
import { applyQ, householderQr, type Qr } from "./householderQr.ts";
import type { Matrix } from "./matrix.ts";

/**
 * A least-squares solution. `coefficients` and `unscaledCovariance` (inverse of XᵀX, row after row) are in the
 * order of the input columns; entries of `aliased` columns are 0.
 */
export interface LeastSquares {
  readonly coefficients: Float64Array;
  readonly residuals: Float64Array;
  readonly residualSumOfSquares: number;
  readonly unscaledCovariance: Float64Array;
  readonly rank: number;
  readonly aliased: readonly number[];
}

const refinements = 12;

/**
 * Minimises ‖response − matrix·coefficients‖. Householder QR on columns scaled by powers of two, then iterative
 * refinement of coefficients and residuals together with residuals in twice the digits (Björck 1967), which
 * brings the coefficients close to the digits the data allow.
 */
export function leastSquares(matrix: Matrix, response: Float64Array, tolerance?: number): LeastSquares {
  const { scaled, exponents } = equilibrate(matrix);
  const qr = householderQr(scaled, tolerance);
  const { rows, columns, rank, pivot } = qr;
  const kept = pivot.subarray(0, rank);
  const x = new Float64Array(columns);
  const residuals = Float64Array.from(response);
  const right = Float64Array.from(response);
  const below = new Float64Array(rank);
  let previous = Number.POSITIVE_INFINITY;
  for (let round = 0; round <= refinements; round++) {
    const step = correction(qr, right, below);
    const size = relativeSize(step.coefficients, x, kept);
    if (round > 1 && size > previous / 2) break;
    previous = size;
    for (const [k, j] of kept.entries()) x[j]! += step.coefficients[k]!;
    for (let i = 0; i < rows; i++) residuals[i] = (round === 0 ? 0 : residuals[i]!) + step.residuals[i]!;
    if (round > 0 && size < 1e-17) break;
    for (let i = 0; i < rows; i++)
      right[i] = -compensatedDot(residuals[i]! - response[i]!, scaled.values, i, rows, x, columns);
    for (let i = 0; i < rows; i++) right[i]! += rounding(residuals[i]!, response[i]!);
    for (const [k, j] of kept.entries())
      below[k] = -compensatedDot(0, scaled.values, j * rows, 1, residuals, rows);
  }
  return {
    coefficients: x.map((value, j) => value * 2 ** -exponents[j]!),
    residuals,
    residualSumOfSquares: residuals.reduce((sum, r) => sum + r * r, 0),
    unscaledCovariance: unscaledCovariance(qr, exponents),
    rank,
    aliased: [...pivot.subarray(rank)].sort((a, b) => a - b),
  };
}

/** What `residual − response` lost to rounding (error-free difference). */
function rounding(residual: number, response: number): number {
  const difference = residual - response;
  const part = difference - residual;
  return -(residual - (difference - part) + (-response - part));
}

function equilibrate({ rows, columns, values }: Matrix): { scaled: Matrix; exponents: Int32Array } {
  const scaled = Float64Array.from(values);
  const exponents = new Int32Array(columns);
  for (let j = 0; j < columns; j++) {
    let largest = 0;
    for (let i = 0; i < rows; i++) largest = Math.max(largest, Math.abs(values[j * rows + i]!));
    exponents[j] = largest > 0 ? Math.ceil(Math.log2(largest)) : 0;
    const factor = 2 ** -exponents[j]!;
    for (let i = 0; i < rows; i++) scaled[j * rows + i]! *= factor;
  }
  return { scaled: { rows, columns, values: scaled }, exponents };
}

/** Solves residuals + X·coefficients = right, Xᵀ·residuals = below with the QR factors. */
function correction(qr: Qr, right: Float64Array, below: Float64Array) {
  const { rows, rank, factors } = qr;
  const rotated = Float64Array.from(right);
  applyQ(qr, rotated, true);
  const lifted = new Float64Array(rank);
  for (let k = 0; k < rank; k++) {
    let sum = below[k]!;
    for (let i = 0; i < k; i++) sum -= factors[k * rows + i]! * lifted[i]!;
    lifted[k] = sum / factors[k * rows + k]!;
  }
  const coefficients = new Float64Array(rank);
  for (let k = rank - 1; k >= 0; k--) {
    let sum = rotated[k]! - lifted[k]!;
    for (let j = k + 1; j < rank; j++) sum -= factors[j * rows + k]! * coefficients[j]!;
    coefficients[k] = sum / factors[k * rows + k]!;
  }
  rotated.set(lifted);
  applyQ(qr, rotated, false);
  return { coefficients, residuals: rotated };
}

function relativeSize(step: Float64Array, x: Float64Array, kept: Int32Array): number {
  let largest = 0;
  for (const [k, j] of kept.entries())
    largest = Math.max(largest, Math.abs(step[k]!) / Math.max(Math.abs(x[j]!), Number.MIN_VALUE));
  return largest;
}

function unscaledCovariance(
  { rows, columns, rank, factors, pivot }: Qr,
  exponents: Int32Array,
): Float64Array {
  const inverse = new Float64Array(rank * rank);
  for (let column = 0; column < rank; column++)
    for (let k = column; k >= 0; k--) {
      let sum = k === column ? 1 : 0;
      for (let j = k + 1; j <= column; j++) sum -= factors[j * rows + k]! * inverse[j * rank + column]!;
      inverse[k * rank + column] = sum / factors[k * rows + k]!;
    }
  const covariance = new Float64Array(columns * columns);
  for (let a = 0; a < rank; a++)
    for (let b = 0; b < rank; b++) {
      let sum = 0;
      for (let k = Math.max(a, b); k < rank; k++) sum += inverse[a * rank + k]! * inverse[b * rank + k]!;
      covariance[pivot[a]! * columns + pivot[b]!] =
        sum * 2 ** -(exponents[pivot[a]!]! + exponents[pivot[b]!]!);
    }
  return covariance;
}
