import type { Matrix } from "./matrix.ts";

/**
 * QR factors of a tall matrix. `factors` holds R above and on the diagonal and the Householder vectors below it
 * (their leading 1 is implied). `pivot[k]` is the column of the input that stands at place k; the first `rank`
 * places are the columns kept, in their own order, the rest are linear combinations of earlier ones.
 */
export interface Qr {
  readonly rows: number;
  readonly columns: number;
  readonly rank: number;
  readonly factors: Float64Array;
  readonly scales: Float64Array;
  readonly pivot: Int32Array;
}

/**
 * Householder QR that keeps the order of the columns and sends a column to the end only when what is left of it
 * after the earlier columns is below `tolerance` times its length. Default 1e-11: exact combinations go, columns
 * that agree to ten digits stay.
 */
export function householderQr(matrix: Matrix, tolerance = 1e-11): Qr {
  const { rows, columns } = matrix;
  const factors = Float64Array.from(matrix.values);
  const scales = new Float64Array(columns);
  const pivot = Int32Array.from({ length: columns }, (_, j) => j);
  const lengths = Float64Array.from({ length: columns }, (_, j) =>
    tailLength(factors, j * rows, (j + 1) * rows),
  );
  let rank = 0;
  let left = columns;
  while (rank < left && rank < rows) {
    const length = tailLength(factors, rank * rows + rank, (rank + 1) * rows);
    if (length === 0 || length < tolerance * lengths[rank]!) {
      sendToEnd(factors, rows, rank, columns);
      rotate(pivot, rank);
      rotate(lengths, rank);
      left--;
      continue;
    }
    scales[rank] = reflect(factors, rows, rank, columns, length);
    rank++;
  }
  return { rows, columns, rank, factors, scales, pivot };
}

/** Overwrites `vector` with Qᵀ·vector (or Q·vector when `transposed` is false). */
export function applyQ(qr: Qr, vector: Float64Array, transposed: boolean): void {
  const { rows, rank, factors, scales } = qr;
  for (let step = 0; step < rank; step++) {
    const k = transposed ? step : rank - 1 - step;
    const column = k * rows;
    let dot = vector[k]!;
    for (let i = k + 1; i < rows; i++) dot += factors[column + i]! * vector[i]!;
    dot *= scales[k]!;
    vector[k]! -= dot;
    for (let i = k + 1; i < rows; i++) vector[i]! -= dot * factors[column + i]!;
  }
}

function reflect(factors: Float64Array, rows: number, k: number, columns: number, length: number): number {
  const column = k * rows;
  const head = factors[column + k]!;
  const diagonal = head > 0 ? -length : length;
  const scale = (diagonal - head) / diagonal;
  const divisor = head - diagonal;
  for (let i = k + 1; i < rows; i++) factors[column + i]! /= divisor;
  factors[column + k] = diagonal;
  for (let j = k + 1; j < columns; j++) {
    const other = j * rows;
    let dot = factors[other + k]!;
    for (let i = k + 1; i < rows; i++) dot += factors[column + i]! * factors[other + i]!;
    dot *= scale;
    factors[other + k]! -= dot;
    for (let i = k + 1; i < rows; i++) factors[other + i]! -= dot * factors[column + i]!;
  }
  return scale;
}

function sendToEnd(factors: Float64Array, rows: number, k: number, columns: number): void {
  const moved = factors.slice(k * rows, (k + 1) * rows);
  factors.copyWithin(k * rows, (k + 1) * rows, columns * rows);
  factors.set(moved, (columns - 1) * rows);
}

function rotate(list: Int32Array | Float64Array, k: number): void {
  const moved = list[k]!;
  list.copyWithin(k, k + 1);
  list[list.length - 1] = moved;
}

function tailLength(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i]! * values[i]!;
  return Math.sqrt(sum);
}
