/**
 * Fills, for each row, the expected successes and the working weight trials·p·(1−p) at log odds `eta`. Returns the
 * log-likelihood of `successes`: that of the single tokens in their order, so that cells and tokens agree.
 */
export function bernoulliMoments(
  successes: Float64Array,
  trials: Float64Array,
  eta: Float64Array,
  expected: Float64Array,
  weights: Float64Array,
): number {
  let logLikelihood = 0;
  for (let i = 0; i < eta.length; i++) {
    const x = eta[i]!;
    const n = trials[i]!;
    const small = Math.exp(-Math.abs(x));
    const share = 1 / (1 + small);
    expected[i] = n * (x > 0 ? share : small * share);
    weights[i] = n * share * share * small;
    logLikelihood += successes[i]! * x - n * (Math.max(x, 0) + Math.log1p(small));
  }
  return logLikelihood;
}
