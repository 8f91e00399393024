import { multiplyVector } from "../linearAlgebra/square.ts";

/** A smooth function with its gradient; a value that is not finite counts as too high. */
export type Objective = (x: Float64Array) => { readonly value: number; readonly gradient: Float64Array };

export interface Minimum {
  readonly x: Float64Array;
  readonly value: number;
  readonly gradient: Float64Array;
  /** Approximate inverse of the matrix of second derivatives, row after row. */
  readonly inverseHessian: Float64Array;
  readonly converged: boolean;
  readonly iterations: number;
}

/**
 * Minimises by the BFGS method (Nocedal & Wright 2006, chapter 6): steps from an inverse Hessian that learns from
 * gradients, halved until they descend. Converged when a further step promises less than `tolerance`.
 */
export function minimise(
  objective: Objective,
  start: Float64Array,
  inverseHessian: Float64Array,
  tolerance = 1e-10,
  mostIterations = 200,
): Minimum {
  const n = start.length;
  const inverse = Float64Array.from(inverseHessian);
  let x = Float64Array.from(start);
  let { value, gradient } = objective(x);
  for (let iteration = 0; iteration < mostIterations; iteration++) {
    let step = multiplyVector(inverse, gradient).map((s) => -s);
    let slope = dot(step, gradient);
    if (!(slope < 0)) {
      inverse.fill(0);
      for (let i = 0; i < n; i++) inverse[i * n + i] = Math.max(inverseHessian[i * n + i]!, 1e-8);
      step = multiplyVector(inverse, gradient).map((s) => -s);
      slope = dot(step, gradient);
    }
    if (-slope <= 2 * tolerance) return result(true, iteration);
    let scale = 1;
    let next = { x, value: Number.POSITIVE_INFINITY, gradient };
    for (let half = 0; half < 40; half++) {
      const trial = x.map((value, i) => value + scale * step[i]!);
      const found = objective(trial);
      if (found.value <= value + 1e-4 * scale * slope) {
        next = { x: trial, ...found };
        break;
      }
      const bend = found.value - value - scale * slope;
      const best = Number.isFinite(bend) && bend > 0 ? (-slope * scale * scale) / (2 * bend) : scale / 4;
      scale = Math.min(scale / 2, Math.max(scale / 10, best));
    }
    if (!Number.isFinite(next.value)) return result(-slope < 1e-6, iteration);
    update(
      inverse,
      next.x.map((value, i) => value - x[i]!),
      next.gradient.map((g, i) => g - gradient[i]!),
    );
    ({ x, value, gradient } = next);
  }
  return result(false, mostIterations);

  function result(converged: boolean, iterations: number): Minimum {
    return { x, value, gradient, inverseHessian: inverse, converged, iterations };
  }
}

function update(inverse: Float64Array, moved: Float64Array, turned: Float64Array): void {
  const n = moved.length;
  const curvature = dot(moved, turned);
  if (!(curvature > 1e-12 * Math.sqrt(dot(moved, moved) * dot(turned, turned)))) return;
  const image = multiplyVector(inverse, turned);
  const factor = (1 + dot(turned, image) / curvature) / curvature;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      inverse[i * n + j]! +=
        factor * moved[i]! * moved[j]! - (image[i]! * moved[j]! + moved[i]! * image[j]!) / curvature;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
