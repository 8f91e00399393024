import type { Objective } from "./minimise.ts";

/** Second derivatives from central differences of the gradient, made symmetric; `steps[j]` is the half step of x[j]. */
export function hessianByDifferences(
  objective: Objective,
  x: Float64Array,
  steps: Float64Array,
): Float64Array {
  const n = x.length;
  const hessian = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const ahead = Float64Array.from(x);
    const back = Float64Array.from(x);
    ahead[j]! += steps[j]!;
    back[j]! -= steps[j]!;
    const up = objective(ahead).gradient;
    const down = objective(back).gradient;
    for (let i = 0; i < n; i++) {
      const value = (up[i]! - down[i]!) / (ahead[j]! - back[j]!) / 2;
      hessian[i * n + j]! += value;
      hessian[j * n + i]! += value;
    }
  }
  return hessian;
}
