import { rowsLeftOut } from "../../messages/models.ts";
import type { DataColumn } from "./term.ts";

/** Rows with a positive count and a known value in every given column, with a notice for each column that cost some. */
export function selectRows(
  columns: Readonly<Record<string, DataColumn>>,
  names: readonly string[],
  size: number,
  counts?: ArrayLike<number>,
): { rows: Uint32Array; notices: string[] } {
  const notices: string[] = [];
  let rows = Uint32Array.from({ length: size }, (_, i) => i);
  if (counts) rows = rows.filter((i) => counts[i]! > 0);
  for (const name of names) {
    const column = columns[name]!;
    const known =
      column instanceof Float64Array
        ? rows.filter((i) => Number.isFinite(column[i]!))
        : rows.filter((i) => (column.labels[column.codes[i]!] ?? null) !== null);
    if (known.length < rows.length) notices.push(rowsLeftOut(rows.length - known.length, name));
    rows = known;
  }
  return { rows, notices };
}
