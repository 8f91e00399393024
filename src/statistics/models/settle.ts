import { invertPositiveDefinite } from "../linearAlgebra/invertPositiveDefinite.ts";
import { multiplyVector } from "../linearAlgebra/square.ts";
import { hessianByDifferences } from "./hessianByDifferences.ts";
import type { Minimum, Objective } from "./minimise.ts";

/** A minimum brought home: the point, the inverse of its second derivatives, and whether a step still promises anything. */
export interface Settled {
  readonly x: Float64Array;
  readonly inverse: Float64Array;
  readonly settled: boolean;
}

const atZero = 1e-3;
const mostSteps = 8;
/** Promised descent (about half the square of the distance in standard errors) that ends the steps, and that will do. */
const exact = 1e-14;
const nothingPromised = 1e-8;
/** Steps that promise less than this leave the second derivatives as good as they were. */
const nearby = 1e-6;

/**
 * Newton steps with second derivatives from differences of the gradient, taken where a quasi-Newton search ended.
 * A standard deviation (the first `scales` parameters) at zero is held there when its curvature is lost in
 * rounding. Null when the point is no minimum.
 */
export function settle(objective: Objective, minimum: Minimum, scales: number): Settled | null {
  let { x, value, gradient } = minimum;
  let inverse = inverseHessianAt(objective, x, minimum.inverseHessian, scales);
  if (!inverse) return null;
  for (let round = 0; ; round++) {
    const step = multiplyVector(inverse, gradient);
    const promised = step.reduce((sum, s, j) => sum + s * gradient[j]!, 0) / 2;
    if (promised < exact || round === mostSteps) return { x, inverse, settled: promised < nothingPromised };
    const trial = x.map((at, j) => at - step[j]!);
    const found = objective(trial);
    if (!(found.value <= value + 1e-9 * (1 + Math.abs(value))))
      return { x, inverse, settled: promised < nothingPromised };
    x = trial;
    ({ value, gradient } = found);
    if (promised > nearby) inverse = inverseHessianAt(objective, x, inverse, scales);
    if (!inverse) return null;
  }
}

function inverseHessianAt(
  objective: Objective,
  x: Float64Array,
  roughInverse: Float64Array,
  scales: number,
): Float64Array | null {
  const n = x.length;
  const steps = Float64Array.from(x, (value, j) => {
    const spread = Math.sqrt(2 * Math.max(roughInverse[j * n + j]!, 0));
    return Math.min(Math.max(1e-3 * spread, 1e-6 * (1 + Math.abs(value))), 1e-2);
  });
  const hessian = hessianByDifferences(objective, x, steps);
  const all = Array.from({ length: n }, (_, j) => j);
  const awayFromZero = all.filter((j) => j >= scales || Math.abs(x[j]!) > atZero);
  return invertPart(hessian, n, all) ?? invertPart(hessian, n, awayFromZero);
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
