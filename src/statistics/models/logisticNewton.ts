import { cholesky, choleskyLogDeterminant } from "../linearAlgebra/cholesky.ts";
import { invertPositiveDefinite } from "../linearAlgebra/invertPositiveDefinite.ts";
import {
  multiply,
  quadraticForms,
  type SparseRows,
  transposeMultiply,
  weightedGram,
} from "../linearAlgebra/sparseRows.ts";
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

/** Largest change of a coefficient in units of its own column's spread in one Firth step (as is usual for this method). */
const longestFirthStep = 5;

/**
 * Maximises the binomial log-likelihood, or with `firth` the likelihood times the square root of the determinant
 * of the information (Firth 1993, Biometrika 80:27–38), by Newton steps halved until they climb.
 */
export function logisticNewton(
  matrix: SparseRows,
  successes: Float64Array,
  trials: Float64Array,
  firth: boolean,
  mostIterations = firth ? 200 : 40,
): NewtonResult {
  const { rows, columns } = matrix;
  const expected = new Float64Array(rows);
  const weights = new Float64Array(rows);
  const residuals = new Float64Array(rows);
  let coefficients: Float64Array = new Float64Array(columns);
  let eta: Float64Array = new Float64Array(rows);
  let logLikelihood = bernoulliMoments(successes, trials, eta, expected, weights);
  let information = weightedGram(matrix, weights);
  let value = logLikelihood + (firth ? halfLogDeterminant(information, columns) : 0);
  let bread: Float64Array | null = null;
  for (let iteration = 1; iteration <= mostIterations; iteration++) {
    bread = invertPositiveDefinite(information, columns);
    if (!bread) return stop(false, iteration);
    for (let i = 0; i < rows; i++) residuals[i] = successes[i]! - expected[i]!;
    if (firth) addFirth(matrix, bread, trials, expected, weights, residuals);
    const score = transposeMultiply(matrix, residuals);
    const step = multiplyVector(bread, score);
    const gain = score.reduce((sum, value, j) => sum + value * step[j]!, 0);
    if (gain <= 1e-18 * (1 + Math.abs(value)) || (gain < 1e-10 && settled(step, coefficients)))
      return stop(true, iteration);
    const longest = firth ? step.reduce((most, s) => Math.max(most, Math.abs(s)), 0) : 0;
    let scale = longest > longestFirthStep ? longestFirthStep / longest : 1;
    for (let half = 0; half < 30; half++, scale /= 2) {
      const trial = coefficients.map((value, j) => value + scale * step[j]!);
      const trialEta = multiply(matrix, trial);
      const trialLogLikelihood = bernoulliMoments(successes, trials, trialEta, expected, weights);
      const trialInformation = weightedGram(matrix, weights);
      const trialValue = trialLogLikelihood + (firth ? halfLogDeterminant(trialInformation, columns) : 0);
      if (!(trialValue >= value - 1e-9 * (1 + Math.abs(value))) && half < 29) continue;
      [coefficients, eta, information] = [trial, trialEta, trialInformation];
      [logLikelihood, value] = [trialLogLikelihood, trialValue];
      break;
    }
  }
  return stop(false, mostIterations);

  function stop(converged: boolean, iterations: number): NewtonResult {
    return { coefficients, bread, eta, weights, residuals, logLikelihood, converged, iterations };
  }
}

/** Adds h·(½ − p) to each row's residual, h being the leverage of the row. */
function addFirth(
  matrix: SparseRows,
  bread: Float64Array,
  trials: Float64Array,
  expected: Float64Array,
  weights: Float64Array,
  residuals: Float64Array,
): void {
  const forms = quadraticForms(matrix, bread);
  for (let i = 0; i < residuals.length; i++)
    if (trials[i]! > 0) residuals[i]! += weights[i]! * forms[i]! * (0.5 - expected[i]! / trials[i]!);
}

function halfLogDeterminant(information: Float64Array, columns: number): number {
  const factor = Float64Array.from(information);
  return cholesky(factor, columns) ? choleskyLogDeterminant(factor, columns) / 2 : Number.NEGATIVE_INFINITY;
}

function settled(step: Float64Array, coefficients: Float64Array): boolean {
  return step.every((s, j) => Math.abs(s) <= 1e-10 * (Math.abs(coefficients[j]!) + 1e-4));
}
