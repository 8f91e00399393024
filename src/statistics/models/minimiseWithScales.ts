import { type Minimum, minimise, type Objective } from "./minimise.ts";

const nearZero = 1e-3;
const probe = 0.1;

/**
 * `minimise` for parameters of which the first `scales` are standard deviations. The function is even in each, so
 * that zero is always level; a search that ends there is taken up again from beside it when that is lower.
 */
export function minimiseWithScales(
  objective: Objective,
  start: Float64Array,
  inverseHessian: Float64Array,
  scales: number,
  tolerance?: number,
): Minimum {
  let minimum = minimise(objective, start, inverseHessian, tolerance);
  for (let k = 0; k < scales; k++) {
    if (Math.abs(minimum.x[k]!) > nearZero) continue;
    const beside = Float64Array.from(minimum.x);
    beside[k] = probe;
    if (objective(beside).value < minimum.value - 1e-8)
      minimum = minimise(objective, beside, inverseHessian, tolerance);
  }
  return minimum;
}
