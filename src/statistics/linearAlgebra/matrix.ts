/** A dense matrix, column after column: entry (i, j) is `values[j * rows + i]`. */
export interface Matrix {
  readonly rows: number;
  readonly columns: number;
  readonly values: Float64Array;
}

/** The matrix whose columns are the given arrays, copied. All must have the same length. */
export function matrixFromColumns(columns: readonly ArrayLike<number>[]): Matrix {
  const rows = columns[0]?.length ?? 0;
  const values = new Float64Array(rows * columns.length);
  for (const [j, column] of columns.entries()) {
    if (column.length !== rows)
      throw new Error(`column ${j} has ${column.length} rows, the first has ${rows}`);
    values.set(column, j * rows);
  }
  return { rows, columns: columns.length, values };
}
