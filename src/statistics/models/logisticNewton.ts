import { invertPositiveDefinite } from "../linearAlgebra/invertPositiveDefinite.ts";
import { multiply, type SparseRows, transposeMultiply, weightedGram } from "../linearAlgebra/sparseRows.ts";
import { multiplyVector } from "../linearAlgebra/square.ts";
import { bernoulliMoments } from "./bernoulli.ts";

export interface NewtonResult {
  readonly coefficients: Float64Array;
  /** Inverse information; null where the information was singular at the last step. */
  readonly bread: Float64Array | null;
  readonly eta: Float64Array;
  readonly weights: Float64Array;
  readonly residuals: Float64Array;
  readonly logLikelihood: number;
  readonly converged: boolean;
  readonly iterations: number;
}

const mostIterations = 40;

/** Maximises the binomial log-likelihood by Newton steps, halved until they climb. */
export function logisticNewton(
  matrix: SparseRows,
  successes: Float64Array,
  trials: Float64Array,
): NewtonResult {
  const { rows, columns } = matrix;
  const expected = new Float64Array(rows);
  const weights = new Float64Array(rows);
  const residuals = new Float64Array(rows);
  let coefficients: Float64Array = new Float64Array(columns);
  let eta: Float64Array = new Float64Array(rows);
  let logLikelihood = bernoulliMoments(successes, trials, eta, expected, weights);
  let bread: Float64Array | null = null;
  for (let iteration = 1; iteration <= mostIterations; iteration++) {
    bread = invertPositiveDefinite(weightedGram(matrix, weights), columns);
    if (!bread) return stop(false, iteration);
    for (let i = 0; i < rows; i++) residuals[i] = successes[i]! - expected[i]!;
    const score = transposeMultiply(matrix, residuals);
    const step = multiplyVector(bread, score);
    const gain = score.reduce((sum, value, j) => sum + value * step[j]!, 0);
    if (gain <= 1e-18 * (1 - logLikelihood) || (gain < 1e-10 && settled(step, coefficients)))
      return stop(true, iteration);
    let scale = 1;
    for (let half = 0; half < 30; half++, scale /= 2) {
      const trial = coefficients.map((value, j) => value + scale * step[j]!);
      const trialEta = multiply(matrix, trial);
      const found = bernoulliMoments(successes, trials, trialEta, expected, weights);
      if (!(found >= logLikelihood - 1e-9 * (1 - logLikelihood)) && half < 29) continue;
      [coefficients, eta, logLikelihood] = [trial, trialEta, found];
      break;
    }
  }
  return stop(false, mostIterations);

  function stop(converged: boolean, iterations: number): NewtonResult {
    return { coefficients, bread, eta, weights, residuals, logLikelihood, converged, iterations };
  }
}

function settled(step: Float64Array, coefficients: Float64Array): boolean {
  return step.every((s, j) => Math.abs(s) <= 1e-10 * (Math.abs(coefficients[j]!) + 1e-4));
}
