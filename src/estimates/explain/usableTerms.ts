import { termUnknown } from "../../messages/explain.ts";
import type { DataColumn } from "../../statistics/models/term.ts";
import { leastKnown } from "./modelColumns.ts";

/** Columns known for most rows, and a warning for each that is not and was dropped. */
export function usableTerms(columns: Readonly<Record<string, DataColumn>>): {
  readonly columns: Readonly<Record<string, DataColumn>>;
  readonly warnings: readonly string[];
} {
  const warnings: string[] = [];
  const usable = Object.entries(columns).filter(([name, column]) => {
    const share = shareKnown(column);
    if (share < leastKnown) warnings.push(termUnknown(name, share));
    return share >= leastKnown;
  });
  return { columns: Object.fromEntries(usable), warnings };
}

/** 1 for rows that are known in every column, 0 for others. */
export function knownRows(columns: Readonly<Record<string, DataColumn>>, size: number): Uint8Array {
  const known = new Uint8Array(size).fill(1);
  for (const column of Object.values(columns))
    for (let i = 0; i < size; i++) if (!isKnown(column, i)) known[i] = 0;
  return known;
}

function shareKnown(column: DataColumn): number {
  const size = column instanceof Float64Array ? column.length : column.codes.length;
  let known = 0;
  for (let i = 0; i < size; i++) if (isKnown(column, i)) known++;
  return size === 0 ? 0 : known / size;
}

/** Whether row `i` has a value. */
export function isKnown(column: DataColumn, i: number): boolean {
  return column instanceof Float64Array
    ? Number.isFinite(column[i])
    : (column.labels[column.codes[i]!] ?? null) !== null;
}
