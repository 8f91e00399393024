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
 * gradients, of a length that descends and along which the slope has eased. Converged when a further step promises less than `tolerance`.
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
  let x: Float64Array = Float64Array.from(start);
  let { value, gradient } = objective(x);
  for (let iteration = 0; iteration < mostIterations; iteration++) {
    let step: Float64Array = multiplyVector(inverse, gradient).map((s) => -s);
    let slope = dot(step, gradient);
    if (!(slope < 0)) {
      inverse.fill(0);
      for (let i = 0; i < n; i++) inverse[i * n + i] = Math.max(inverseHessian[i * n + i]!, 1e-8);
      step = multiplyVector(inverse, gradient).map((s) => -s);
      slope = dot(step, gradient);
    }
    if (-slope <= 2 * tolerance) return result(true, iteration);
    const next = lineSearch(objective, x, value, step, slope);
    if (!next) return result(-slope < 1e-6, iteration);
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

interface Found {
  readonly x: Float64Array;
  readonly value: number;
  readonly gradient: Float64Array;
}

/** A point along `step` that meets Wolfe's conditions, or the best that descends; null when none does. */
function lineSearch(
  objective: Objective,
  x: Float64Array,
  value: number,
  step: Float64Array,
  slope: number,
): Found | null {
  let best: Found | null = null;
  let low = 0;
  let high = Number.POSITIVE_INFINITY;
  let scale = 1;
  for (let round = 0; round < 40; round++) {
    const at = x.map((from, i) => from + scale * step[i]!);
    const found = { x: at, ...objective(at) };
    if (found.value <= value + 1e-4 * scale * slope) {
      if (!best || found.value < best.value) best = found;
      if (dot(found.gradient, step) >= 0.9 * slope) return found;
      low = scale;
    } else if (best && round > 8) {
      return best;
    } else {
      high = scale;
    }
    if (high === Number.POSITIVE_INFINITY) {
      scale *= 4;
      continue;
    }
    const bend = found.value - value - scale * slope;
    const lowest = scale === high && bend > 0 ? (-slope * scale * scale) / (2 * bend) : Number.NaN;
    const inside = lowest > low + 0.1 * (high - low) && lowest < low + 0.5 * (high - low);
    scale = inside ? lowest : low === 0 && !Number.isFinite(bend) ? high / 10 : (low + high) / 2;
  }
  return best;
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
