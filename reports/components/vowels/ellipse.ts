import type { Spread } from "../../../src/estimates/samples/formantSample.ts";

/** Radius, in standard deviations, of the ellipse of a normal distribution in the plane that holds this share of it. */
export function radiusHolding(share: number): number {
  return Math.sqrt(-2 * Math.log(1 - share));
}

/** Outline of the ellipse of a covariance about a centre, as points [F2, F1]. */
export function ellipse(
  [f1, f2]: readonly [number, number],
  spread: Spread,
  radius: number,
  corners = 64,
): [number, number][] {
  // Cholesky factor of the covariance: f1 = a·u, f2 = b·u + c·v for a point (u, v) of the circle.
  const a = Math.sqrt(Math.max(0, spread.f1));
  const b = a > 0 ? spread.both / a : 0;
  const c = Math.sqrt(Math.max(0, spread.f2 - b * b));
  return Array.from({ length: corners + 1 }, (_, k) => {
    const angle = (2 * Math.PI * k) / corners;
    const [u, v] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    return [f2 + b * u + c * v, f1 + a * u];
  });
}
