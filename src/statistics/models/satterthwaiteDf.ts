import { multiplySquare, multiplyVector, transposeSquare } from "../linearAlgebra/square.ts";

/** Share of the error that the estimator must see. */
const leastSeen = 0.95;

/**
 * Degrees of freedom of a CR2 variance of `contrast`ᵀ·coefficients: 2·mean²/variance of the estimator if tokens
 * were independent with the working variance (Bell & McCaffrey 2002). 0 when the clusters say nothing about it, or too
 * little: where a cluster alone decides a part of the contrast, such as the only word of a level, its residuals vanish
 * and the estimator misses that part of the error, so that its mean falls short of contrastᵀ·M·contrast.
 * With aₕ the part of cluster h in the estimator, the covariance of parts is diagonal less aᵍᵀ·M·aₕ, so that sums
 * over pairs of clusters reduce to a trace and the time grows with the clusters, not with their square.
 */
export function satterthwaiteDf(
  contrast: ArrayLike<number>,
  bread: Float64Array,
  information: readonly Float64Array[],
  adjustments: readonly Float64Array[],
): number {
  const n = contrast.length;
  const direction = multiplyVector(bread, contrast);
  const outer = new Float64Array(n * n);
  let trace = 0;
  let squares = 0;
  for (const [g, adjustment] of adjustments.entries()) {
    const own = multiplyVector(transposeSquare(adjustment, n), direction);
    const image = multiplyVector(information[g]!, own);
    const diagonal = dot(own, image);
    const shared = dot(image, multiplyVector(bread, image));
    trace += diagonal - shared;
    squares += diagonal * diagonal - 2 * diagonal * shared;
    for (let a = 0; a < n; a++) for (let b = 0; b < n; b++) outer[a * n + b]! += image[a]! * image[b]!;
  }
  const product = multiplySquare(outer, bread, n);
  squares += dot(product, transposeSquare(product, n));
  if (!(squares > 0) || trace < leastSeen * dot(direction, contrast)) return 0;
  return (trace * trace) / squares;
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
