import { cholesky, choleskySolve } from "../../statistics/linearAlgebra/cholesky.ts";
import { type LogisticModel, logistic } from "./logistic.ts";

export interface LogisticData {
  /** rows × dims, row-major. */
  readonly x: ArrayLike<number>;
  /** 0 or 1 (or a share between) for each row. */
  readonly y: ArrayLike<number>;
  /** Weight of each row, ≥ 0. */
  readonly weight: ArrayLike<number>;
}

/**
 * Logistic regression drawn towards `prior` by a ridge of strength `pull` on every coefficient (in units of one row's
 * information). Newton steps with halving; with no rows the prior itself comes back. Deterministic.
 */
export function learnLogistic(data: LogisticData, prior: LogisticModel, pull: number): LogisticModel {
  const dims = prior.weights.length;
  const size = dims + 1;
  const centre = [...prior.weights, prior.bias];
  let beta = [...centre];
  let loss = penalisedLoss(data, beta, centre, pull);
  for (let step = 0; step < 30; step++) {
    const { gradient, hessian } = derivatives(data, beta, centre, pull);
    if (!cholesky(hessian, size)) break;
    choleskySolve(hessian, size, gradient);
    let scale = 1;
    let next = beta;
    let nextLoss = Number.POSITIVE_INFINITY;
    for (; scale > 1e-3; scale /= 2) {
      next = beta.map((b, d) => b - scale * gradient[d]!);
      nextLoss = penalisedLoss(data, next, centre, pull);
      if (nextLoss <= loss) break;
    }
    if (!(nextLoss <= loss)) break;
    const gain = loss - nextLoss;
    beta = next;
    loss = nextLoss;
    if (gain < 1e-9 * (1 + loss)) break;
  }
  return { weights: beta.slice(0, dims), bias: beta[dims]! };
}

function penalisedLoss(
  { x, y, weight }: LogisticData,
  beta: readonly number[],
  centre: readonly number[],
  pull: number,
) {
  const dims = beta.length - 1;
  let loss = 0;
  for (let row = 0; row < y.length; row++) {
    let z = beta[dims]!;
    for (let d = 0; d < dims; d++) z += beta[d]! * x[row * dims + d]!;
    const soft = z > 0 ? z + Math.log1p(Math.exp(-z)) : Math.log1p(Math.exp(z));
    loss += weight[row]! * (soft - y[row]! * z);
  }
  for (let d = 0; d <= dims; d++) loss += 0.5 * pull * (beta[d]! - centre[d]!) ** 2;
  return loss;
}

function derivatives(
  { x, y, weight }: LogisticData,
  beta: readonly number[],
  centre: readonly number[],
  pull: number,
) {
  const dims = beta.length - 1;
  const size = dims + 1;
  const gradient = new Float64Array(size);
  const hessian = new Float64Array(size * size);
  const row1 = new Float64Array(size).fill(1);
  for (let row = 0; row < y.length; row++) {
    let z = beta[dims]!;
    for (let d = 0; d < dims; d++) {
      row1[d] = x[row * dims + d]!;
      z += beta[d]! * row1[d]!;
    }
    const p = logistic(z);
    const slope = weight[row]! * (p - y[row]!);
    const curve = weight[row]! * p * (1 - p);
    for (let a = 0; a < size; a++) {
      gradient[a]! += slope * row1[a]!;
      for (let b = 0; b <= a; b++) hessian[a * size + b]! += curve * row1[a]! * row1[b]!;
    }
  }
  for (let a = 0; a < size; a++) {
    gradient[a]! += pull * (beta[a]! - centre[a]!);
    hessian[a * size + a]! += pull + 1e-9;
    for (let b = 0; b < a; b++) hessian[b * size + a] = hessian[a * size + b]!;
  }
  return { gradient, hessian };
}
