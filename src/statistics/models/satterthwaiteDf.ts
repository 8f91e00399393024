import { multiplyVector, transposeSquare } from "../linearAlgebra/square.ts";

/**
 * Degrees of freedom of a CR2 variance of `contrast`ᵀ·coefficients: 2·mean²/variance of the estimator if tokens
 * were independent with the working variance (Bell & McCaffrey 2002). At least 1 when a single cluster decides.
 */
export function satterthwaiteDf(
  contrast: ArrayLike<number>,
  bread: Float64Array,
  information: readonly Float64Array[],
  adjustments: readonly Float64Array[],
): number {
  const n = contrast.length;
  const direction = multiplyVector(bread, contrast);
  const weighted = adjustments.map((adjustment, g) => {
    const own = multiplyVector(transposeSquare(adjustment, n), direction);
    const image = multiplyVector(information[g]!, own);
    return { own: dot(own, image), image, spread: multiplyVector(bread, image) };
  });
  let trace = 0;
  let squares = 0;
  for (const [g, a] of weighted.entries())
    for (const [h, b] of weighted.entries()) {
      const covariance = (g === h ? a.own : 0) - dot(a.image, b.spread);
      if (g === h) trace += covariance;
      squares += covariance * covariance;
    }
  return squares > 0 ? (trace * trace) / squares : 0;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
