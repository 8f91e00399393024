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
  const out = new Uint8Array(size);
  let left = size;
  if (counts) for (let i = 0; i < size; i++) if (!(counts[i]! > 0)) left -= out[i] = 1;
  for (const name of names) {
    const before = left;
    left -= leaveOut(columns[name]!, out);
    if (left < before) notices.push(rowsLeftOut(before - left, name));
  }
  const rows = new Uint32Array(left);
  for (let i = 0, next = 0; i < size; i++) if (out[i] === 0) rows[next++] = i;
  return { rows, notices };
}

/** Marks rows without a known value; returns how many were not marked before. */
function leaveOut(column: DataColumn, out: Uint8Array): number {
  let marked = 0;
  if (column instanceof Float64Array) {
    for (let i = 0; i < out.length; i++)
      if (out[i] === 0 && !Number.isFinite(column[i]!)) marked += out[i] = 1;
    return marked;
  }
  const { codes, labels } = column;
  const unknown = Uint8Array.from({ length: labels.length + 1 }, (_, code) =>
    (labels[code] ?? null) === null ? 1 : 0,
  );
  for (let i = 0; i < out.length; i++)
    if (out[i] === 0 && unknown[Math.min(codes[i]!, labels.length)] === 1) marked += out[i] = 1;
  return marked;
}
