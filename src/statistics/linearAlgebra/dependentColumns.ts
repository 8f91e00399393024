/**
 * Columns that are linear combinations of earlier ones, found from the gram matrix XᵀX (n × n, row after row) by
 * Gaussian elimination in order. A column is dependent when what earlier columns leave of its squared length is
 * below `tolerance` times that length. Default 1e-10; squares halve the digits, so use scaled, centred columns.
 */
export function dependentColumns(gram: Float64Array, n: number, tolerance = 1e-10): number[] {
  const a = Float64Array.from(gram);
  const dependent: number[] = [];
  for (let k = 0; k < n; k++) {
    const diagonal = a[k * n + k]!;
    if (!(diagonal > tolerance * gram[k * n + k]!)) {
      dependent.push(k);
      continue;
    }
    for (let i = k + 1; i < n; i++) {
      const factor = a[i * n + k]! / diagonal;
      if (factor !== 0) for (let j = k + 1; j <= i; j++) a[i * n + j]! -= factor * a[j * n + k]!;
    }
  }
  return dependent;
}
