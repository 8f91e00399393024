/** log(1 + eˣ) without overflow. */
export function logOnePlusExp(x: number): number {
  return x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));
}

/**
 * Log-likelihood of `successes` of `trials` tokens at log odds `eta`, summed over rows. It is that of the single
 * tokens in their order, so that cells and tokens give the same number.
 */
export function bernoulliLogLikelihood(
  successes: Float64Array,
  trials: Float64Array,
  eta: Float64Array,
): number {
  let sum = 0;
  for (let i = 0; i < eta.length; i++) sum += successes[i]! * eta[i]! - trials[i]! * logOnePlusExp(eta[i]!);
  return sum;
}

/** Fills, for each row, the expected successes and the working weight trials·p·(1−p). */
export function bernoulliMoments(
  trials: Float64Array,
  eta: Float64Array,
  expected: Float64Array,
  weights: Float64Array,
): void {
  for (let i = 0; i < eta.length; i++) {
    const small = Math.exp(-Math.abs(eta[i]!));
    const share = 1 / (1 + small);
    const p = eta[i]! > 0 ? share : small * share;
    expected[i] = trials[i]! * p;
    weights[i] = trials[i]! * share * share * small;
  }
}
