import type { CategoricalColumn } from "./term.ts";

/** One grouping of the design rows: `codes[i]` is the group of row i, 0 … `labels.length` − 1; all groups occur. */
export interface Groups {
  readonly unit: string;
  readonly labels: readonly (string | null)[];
  readonly codes: Uint32Array;
}

/** Groups of a column over the given rows, numbered as met. */
export function groupsOf(unit: string, column: CategoricalColumn, rows: Uint32Array): Groups {
  const place = new Int32Array(column.labels.length).fill(-1);
  const labels: (string | null)[] = [];
  const codes = new Uint32Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const code = column.codes[rows[i]!]!;
    if (place[code] === -1) place[code] = labels.push(column.labels[code] ?? null) - 1;
    codes[i] = place[code]!;
  }
  return { unit, labels, codes };
}

/**
 * Two crossed groupings (or one, then `few` has no groups), arranged for elimination: `many` is the grouping with
 * more groups. Pairs are the combinations that occur, sorted by group of `many`: group w owns pairs
 * `pairStart[w] … pairStart[w+1]`, each with its group of `few`.
 */
export interface CrossedGroups {
  readonly rows: number;
  readonly few: Uint32Array;
  readonly many: Uint32Array;
  readonly fewCount: number;
  readonly manyCount: number;
  readonly pairOfRow: Uint32Array;
  readonly pairStart: Uint32Array;
  readonly pairFew: Uint32Array;
}

export function crossGroups(many: Groups, few: Groups | null): CrossedGroups {
  const rows = many.codes.length;
  const manyCount = many.labels.length;
  const fewCount = few?.labels.length ?? 0;
  const pairStart = new Uint32Array(manyCount + 1);
  const pairOfRow = new Uint32Array(rows);
  if (!few)
    return {
      rows,
      few: pairOfRow,
      many: many.codes,
      fewCount,
      manyCount,
      pairOfRow,
      pairStart,
      pairFew: new Uint32Array(0),
    };

  const { order } = rowsByGroup(many);
  const lastSeenIn = new Int32Array(fewCount).fill(-1);
  const pairOfFew = new Uint32Array(fewCount);
  const pairFew: number[] = [];
  for (const i of order) {
    const w = many.codes[i]!;
    const s = few.codes[i]!;
    if (lastSeenIn[s] !== w) {
      lastSeenIn[s] = w;
      pairOfFew[s] = pairFew.push(s) - 1;
    }
    pairOfRow[i] = pairOfFew[s]!;
    pairStart[w + 1] = pairFew.length;
  }
  return {
    rows,
    few: few.codes,
    many: many.codes,
    fewCount,
    manyCount,
    pairOfRow,
    pairStart,
    pairFew: Uint32Array.from(pairFew),
  };
}

/** Rows gathered by group: group g owns `order[start[g] … start[g+1]]`. */
export interface RowsByGroup {
  readonly start: Uint32Array;
  readonly order: Uint32Array;
}

export function rowsByGroup({ codes, labels }: Groups): RowsByGroup {
  const start = new Uint32Array(labels.length + 1);
  for (const code of codes) start[code + 1]!++;
  for (let g = 0; g < labels.length; g++) start[g + 1]! += start[g]!;
  const next = start.slice();
  const order = new Uint32Array(codes.length);
  for (let i = 0; i < codes.length; i++) order[next[codes[i]!]!++] = i;
  return { start, order };
}
