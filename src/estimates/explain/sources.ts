import { labelAt, type TokenTable } from "../tokenTable.ts";

/** The tokens of one dataset and label set; label sets are never pooled. */
export interface Source {
  readonly dataset: string;
  readonly labelSet: string;
  /** Rows of the table, ascending. */
  readonly rows: Uint32Array;
}

/** The rows of every dataset and label set, sorted by name. */
export function sourcesOf(table: TokenTable): Source[] {
  const { dataset, labelSet } = table.labels;
  const found = new Map<number, number[]>();
  const several = labelSet.labels.length;
  for (let i = 0; i < table.size; i++) {
    const key = dataset.codes[i]! * several + labelSet.codes[i]!;
    const rows = found.get(key);
    if (rows) rows.push(i);
    else found.set(key, [i]);
  }
  return [...found.values()]
    .map((rows) => ({
      dataset: labelAt(dataset, rows[0]!) ?? "unknown",
      labelSet: labelAt(labelSet, rows[0]!) ?? "unknown",
      rows: Uint32Array.from(rows),
    }))
    .sort((a, b) => order(a.dataset, b.dataset) || order(a.labelSet, b.labelSet));
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
