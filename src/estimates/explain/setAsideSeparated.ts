import type { DataColumn } from "../../statistics/models/term.ts";
import type { SeparatedLevel } from "./explanation.ts";

/**
 * Rows to keep (1) when every level of which none or all rows are devoiced is set aside, in rounds until none is left.
 * Where all rows of a level have one outcome the likelihood grows for ever along its coefficient, and in that limit
 * those rows add nothing: the other coefficients are the same with or without them.
 */
export function setAsideSeparated(
  columns: Readonly<Record<string, DataColumn>>,
  usable: Uint8Array,
  devoiced: Float64Array,
): { readonly kept: Uint8Array; readonly separated: readonly SeparatedLevel[] } {
  const kept = usable.slice();
  const separated: SeparatedLevel[] = [];
  for (;;) {
    const found = separatedIn(columns, kept, devoiced);
    if (found.length === 0) return { kept, separated };
    for (const { term, level, tokens, code } of found) {
      const column = columns[term]!;
      if (column instanceof Float64Array) continue;
      let hits = 0;
      for (let i = 0; i < kept.length; i++) {
        if (column.codes[i] !== code || kept[i] === 0) continue;
        kept[i] = 0;
        hits += devoiced[i]!;
      }
      separated.push({ term, level, tokens, devoiced: hits });
    }
  }
}

function separatedIn(
  columns: Readonly<Record<string, DataColumn>>,
  kept: Uint8Array,
  devoiced: Float64Array,
) {
  for (const [term, column] of Object.entries(columns)) {
    if (column instanceof Float64Array) continue;
    const tokens = new Float64Array(column.labels.length);
    const hits = new Float64Array(column.labels.length);
    for (let i = 0; i < kept.length; i++) {
      if (kept[i] === 0) continue;
      tokens[column.codes[i]!]! += 1;
      hits[column.codes[i]!]! += devoiced[i]!;
    }
    const present = tokens.filter((n) => n > 0).length;
    const alike = column.labels.flatMap((label, code) =>
      label !== null && tokens[code]! > 0 && (hits[code] === 0 || hits[code] === tokens[code])
        ? [{ term, level: label, tokens: tokens[code]!, code }]
        : [],
    );
    // Where every level has one outcome the term tells the outcome: nothing would be left to model.
    if (alike.length > 0 && alike.length < present) return alike;
  }
  return [];
}
