/**
 * A matrix stored row by row without its zeros: row i owns entries `start[i] … start[i+1]`, each a column index
 * and a value, columns ascending. Design matrices of categorical terms are mostly zeros.
 */
export interface SparseRows {
  readonly rows: number;
  readonly columns: number;
  readonly start: Uint32Array;
  readonly column: Uint16Array;
  readonly value: Float64Array;
}

/** matrix · vector, one value a row. */
export function multiply(
  matrix: SparseRows,
  vector: Float64Array,
  out = new Float64Array(matrix.rows),
): Float64Array {
  const { rows, start, column, value } = matrix;
  for (let i = 0; i < rows; i++) {
    let sum = 0;
    for (let k = start[i]!; k < start[i + 1]!; k++) sum += value[k]! * vector[column[k]!]!;
    out[i] = sum;
  }
  return out;
}

/** matrixᵀ · vector, one value a column. */
export function transposeMultiply(matrix: SparseRows, vector: Float64Array): Float64Array {
  const { rows, columns, start, column, value } = matrix;
  const out = new Float64Array(columns);
  for (let i = 0; i < rows; i++) {
    const factor = vector[i]!;
    for (let k = start[i]!; k < start[i + 1]!; k++) out[column[k]!]! += value[k]! * factor;
  }
  return out;
}

/** matrixᵀ · diag(weights) · matrix, full and symmetric, row after row. */
export function weightedGram(matrix: SparseRows, weights: Float64Array): Float64Array {
  const { rows, columns, start, column, value } = matrix;
  const gram = new Float64Array(columns * columns);
  for (let i = 0; i < rows; i++) {
    const weight = weights[i]!;
    const from = start[i]!;
    for (let a = from; a < start[i + 1]!; a++) {
      const scaled = weight * value[a]!;
      const row = column[a]! * columns;
      for (let b = from; b <= a; b++) gram[row + column[b]!]! += scaled * value[b]!;
    }
  }
  for (let a = 0; a < columns; a++)
    for (let b = 0; b < a; b++) gram[b * columns + a] = gram[a * columns + b]!;
  return gram;
}

/** xᵢᵀ · symmetric · xᵢ for every row; `symmetric` is columns × columns. */
export function quadraticForms(matrix: SparseRows, symmetric: Float64Array): Float64Array {
  const { rows, columns, start, column, value } = matrix;
  const out = new Float64Array(rows);
  for (let i = 0; i < rows; i++) {
    let sum = 0;
    for (let a = start[i]!; a < start[i + 1]!; a++)
      for (let b = start[i]!; b < start[i + 1]!; b++)
        sum += value[a]! * value[b]! * symmetric[column[a]! * columns + column[b]!]!;
    out[i] = sum;
  }
  return out;
}
