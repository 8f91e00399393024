import { cholesky, choleskyInverse } from "./cholesky.ts";

/**
 * Inverse of a symmetric positive definite matrix (n × n, row after row), or null when it is not positive
 * definite. Rows and columns are first scaled to a unit diagonal, so that units of the columns do not matter.
 */
export function invertPositiveDefinite(a: Float64Array, n: number): Float64Array | null {
  const scale = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const diagonal = a[i * n + i]!;
    if (!(diagonal > 0 && diagonal < Number.POSITIVE_INFINITY)) return null;
    scale[i] = 1 / Math.sqrt(diagonal);
  }
  const scaled = a.map((value, at) => value * scale[Math.floor(at / n)]! * scale[at % n]!);
  if (!cholesky(scaled, n)) return null;
  for (let i = 0; i < n; i++) if (scaled[i * n + i]! < 1e-8) return null;
  const inverse = choleskyInverse(scaled, n);
  return inverse.map((value, at) => value * scale[Math.floor(at / n)]! * scale[at % n]!);
}
