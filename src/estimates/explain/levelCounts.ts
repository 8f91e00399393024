import type { CategoricalColumn } from "../../statistics/models/term.ts";

/** Rows of each level, and how many of them are devoiced; both by code. */
export interface LevelCounts {
  readonly tokens: Float64Array;
  readonly devoiced: Float64Array;
}

/** Counts the rows that are kept (1). */
export function levelCounts(
  { codes, labels }: CategoricalColumn,
  kept: Uint8Array,
  devoiced: Float64Array,
): LevelCounts {
  const counts = { tokens: new Float64Array(labels.length), devoiced: new Float64Array(labels.length) };
  for (let i = 0; i < kept.length; i++) {
    if (kept[i] === 0) continue;
    counts.tokens[codes[i]!]! += 1;
    counts.devoiced[codes[i]!]! += devoiced[i]!;
  }
  return counts;
}
