/** Points and weights of Gauss–Hermite quadrature for ∫ f(z)·exp(−z²) dz; exact for polynomials up to 2·points − 1. */
export interface Quadrature {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/** Roots of the Hermite polynomial by Newton's method on its normalised three-term recurrence; 1 to 60 points. */
export function gaussHermite(points: number): Quadrature {
  const nodes = new Float64Array(points);
  const weights = new Float64Array(points);
  const found: number[] = [];
  for (let k = 0; k < points; k++) {
    let z = startOf(k, points, found);
    let slope = 0;
    for (let round = 0; round < 100; round++) {
      const { value, below } = hermite(points, z);
      slope = Math.sqrt(2 * points) * below;
      // Roots already found are divided out, so that each start leads to a new one.
      const repelled = found.reduce((sum, root) => sum + 1 / (z - root), 0);
      const step = value / (slope - value * repelled);
      z -= step;
      if (Math.abs(step) < 1e-15 * (1 + Math.abs(z))) break;
    }
    slope = Math.sqrt(2 * points) * hermite(points, z).below;
    found.push(z);
    nodes[k] = z;
    weights[k] = 2 / (slope * slope);
  }
  const order = [...nodes.keys()].sort((a, b) => nodes[a]! - nodes[b]!);
  return {
    nodes: Float64Array.from(order, (k) => nodes[k]!),
    weights: Float64Array.from(order, (k) => weights[k]!),
  };
}

function startOf(k: number, points: number, found: readonly number[]): number {
  const edge = Math.sqrt(2 * points + 1);
  return k === 0 ? edge : found[k - 1]! - (0.9 * Math.PI) / Math.sqrt(2 * points + 1);
}

/** Orthonormal Hermite polynomials of degree `n` and `n` − 1 at `z`. */
function hermite(n: number, z: number): { value: number; below: number } {
  let value = Math.PI ** -0.25;
  let below = 0;
  for (let j = 1; j <= n; j++) {
    const next = z * Math.sqrt(2 / j) * value - Math.sqrt((j - 1) / j) * below;
    below = value;
    value = next;
  }
  return { value, below };
}
