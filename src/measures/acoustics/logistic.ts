/** A logistic model: log-odds = weights · x + bias. */
export interface LogisticModel {
  readonly weights: readonly number[];
  readonly bias: number;
}

/** Log-odds of one row that starts at `offset`. */
export function logOdds(model: LogisticModel, x: ArrayLike<number>, offset = 0): number {
  let sum = model.bias;
  for (let d = 0; d < model.weights.length; d++) sum += model.weights[d]! * x[offset + d]!;
  return sum;
}

/** 1 / (1 + e^−z). */
export function logistic(z: number): number {
  return z >= 0 ? 1 / (1 + Math.exp(-z)) : Math.exp(z) / (1 + Math.exp(z));
}
