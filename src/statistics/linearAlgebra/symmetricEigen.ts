/** Eigenvalues and vectors of a symmetric matrix; vector k is column k of `vectors` (row after row). */
export interface SymmetricEigen {
  readonly values: Float64Array;
  readonly vectors: Float64Array;
}

/** Cyclic Jacobi rotations until nothing is left off the diagonal; meant for n up to about 100. */
export function symmetricEigen(matrix: Float64Array, n: number): SymmetricEigen {
  const a = Float64Array.from(matrix);
  const vectors = new Float64Array(n * n);
  for (let i = 0; i < n; i++) vectors[i * n + i] = 1;
  const total = Math.sqrt(a.reduce((sum, value) => sum + value * value, 0));
  for (let sweep = 0; sweep < 60 && offDiagonal(a, n) > 1e-16 * total; sweep++)
    for (let p = 0; p < n - 1; p++)
      for (let q = p + 1; q < n; q++) {
        const apq = a[p * n + q]!;
        if (apq === 0) continue;
        const theta = (a[q * n + q]! - a[p * n + p]!) / (2 * apq);
        const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1));
        const c = 1 / Math.hypot(t, 1);
        const s = t * c;
        for (let k = 0; k < n; k++) rotate(a, k * n + p, k * n + q, c, s);
        for (let k = 0; k < n; k++) rotate(a, p * n + k, q * n + k, c, s);
        for (let k = 0; k < n; k++) rotate(vectors, k * n + p, k * n + q, c, s);
      }
  return { values: Float64Array.from({ length: n }, (_, i) => a[i * n + i]!), vectors };
}

function rotate(a: Float64Array, first: number, second: number, c: number, s: number): void {
  const x = a[first]!;
  const y = a[second]!;
  a[first] = c * x - s * y;
  a[second] = s * x + c * y;
}

function offDiagonal(a: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) for (let j = 0; j < i; j++) sum += a[i * n + j]! ** 2;
  return Math.sqrt(2 * sum);
}
