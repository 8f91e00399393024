import type { Columns } from "../measures/column.ts";

/** Rows column by column, as a table takes them: a column a name, a value a row. */
export interface ColumnValues {
  readonly rows: number;
  readonly values: Readonly<Record<string, readonly unknown[]>>;
}

/** Turns rows into columns; every row has all of them. */
export function toColumnValues(rows: readonly object[], columns: Columns): ColumnValues {
  const values: Record<string, unknown[]> = {};
  for (const name of Object.keys(columns)) {
    const column = new Array<unknown>(rows.length);
    for (let i = 0; i < rows.length; i++) column[i] = (rows[i] as Record<string, unknown>)[name];
    values[name] = column;
  }
  return { rows: rows.length, values };
}
