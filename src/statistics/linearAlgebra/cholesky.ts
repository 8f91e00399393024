/**
 * Overwrites the lower triangle of the symmetric `a` (n × n, row after row) with L of a = L·Lᵀ; the upper
 * triangle is left alone. Returns false, leaving `a` half done, when `a` is not positive definite.
 */
export function cholesky(a: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) {
    const row = i * n;
    for (let j = 0; j <= i; j++) {
      const other = j * n;
      let sum = a[row + j]!;
      for (let k = 0; k < j; k++) sum -= a[row + k]! * a[other + k]!;
      if (j < i) a[row + j] = sum / a[other + j]!;
      else if (sum > 0) a[row + j] = Math.sqrt(sum);
      else return false;
    }
  }
  return true;
}

/** Overwrites `b` with the solution of L·Lᵀ·x = b. */
export function choleskySolve(l: Float64Array, n: number, b: Float64Array): void {
  lowerSolve(l, n, b);
  lowerTransposeSolve(l, n, b);
}

/** Overwrites `b` with the solution of L·x = b. */
export function lowerSolve(l: Float64Array, n: number, b: Float64Array): void {
  for (let i = 0; i < n; i++) {
    let sum = b[i]!;
    for (let k = 0; k < i; k++) sum -= l[i * n + k]! * b[k]!;
    b[i] = sum / l[i * n + i]!;
  }
}

/** Overwrites `b` with the solution of Lᵀ·x = b. */
export function lowerTransposeSolve(l: Float64Array, n: number, b: Float64Array): void {
  for (let i = n - 1; i >= 0; i--) {
    b[i]! /= l[i * n + i]!;
    for (let k = 0; k < i; k++) b[k]! -= l[i * n + k]! * b[i]!;
  }
}

/** Natural logarithm of the determinant of L·Lᵀ. */
export function choleskyLogDeterminant(l: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += Math.log(l[i * n + i]!);
  return 2 * sum;
}

/** Inverse of L·Lᵀ, full and symmetric, row after row. */
export function choleskyInverse(l: Float64Array, n: number): Float64Array {
  const rows = new Float64Array(n * n);
  for (let j = 0; j < n; j++)
    for (let i = j; i < n; i++) {
      let sum = i === j ? 1 : 0;
      for (let k = j; k < i; k++) sum -= l[i * n + k]! * rows[j * n + k]!;
      rows[j * n + i] = sum / l[i * n + i]!;
    }
  const inverse = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let k = i; k < n; k++) sum += rows[i * n + k]! * rows[j * n + k]!;
      inverse[i * n + j] = sum;
      inverse[j * n + i] = sum;
    }
  return inverse;
}
