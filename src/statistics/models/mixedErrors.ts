import { invertPositiveDefinite } from "../linearAlgebra/invertPositiveDefinite.ts";
import { hessianByDifferences } from "./hessianByDifferences.ts";
import type { Minimum, Objective } from "./minimise.ts";

const atZero = 1e-3;

/**
 * Covariance of the parameters after the first `scales` ones (the standard deviations), from the second
 * derivatives of −2·log-likelihood; `inverse` is that of all parameters. A standard deviation at zero is held there
 * when its curvature is lost in rounding. Null when the point is no minimum.
 */
export function mixedErrors(
  objective: Objective,
  minimum: Minimum,
  scales: number,
): { readonly covariance: Float64Array; readonly inverse: Float64Array } | null {
  const { x, inverseHessian } = minimum;
  const n = x.length;
  const steps = Float64Array.from(x, (value, j) => {
    const spread = Math.sqrt(2 * Math.max(inverseHessian[j * n + j]!, 0));
    return Math.min(Math.max(1e-3 * spread, 1e-6 * (1 + Math.abs(value))), 1e-2);
  });
  const hessian = hessianByDifferences(objective, x, steps);
  const all = Array.from({ length: n }, (_, j) => j);
  const inverse =
    invertPart(hessian, n, all) ??
    invertPart(
      hessian,
      n,
      all.filter((j) => j >= scales || Math.abs(x[j]!) > atZero),
    );
  if (!inverse) return null;
  const k = n - scales;
  const covariance = new Float64Array(k * k);
  for (let a = 0; a < k; a++)
    for (let b = 0; b < k; b++) covariance[a * k + b] = 2 * inverse[(a + scales) * n + b + scales]!;
  return { covariance, inverse };
}

function invertPart(hessian: Float64Array, n: number, free: readonly number[]): Float64Array | null {
  const part = Float64Array.from(free.flatMap((a) => free.map((b) => hessian[a * n + b]!)));
  const inverse = invertPositiveDefinite(part, free.length);
  if (!inverse) return null;
  const whole = new Float64Array(n * n);
  for (const [a, i] of free.entries())
    for (const [b, j] of free.entries()) whole[i * n + j] = inverse[a * free.length + b]!;
  return whole;
}
