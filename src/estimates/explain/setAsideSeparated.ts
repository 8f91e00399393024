import type { DataColumn } from "../../statistics/models/term.ts";
import type { SeparatedLevel } from "./explanation.ts";
import { levelCounts } from "./levelCounts.ts";

/** What is left to model, and what is not. */
export interface SetAside {
  /** 1 for rows to keep. */
  readonly kept: Uint8Array;
  /** Levels set aside, in the order of the rounds. */
  readonly separated: readonly SeparatedLevel[];
  /** Levels of a term each of which has one outcome: the term tells every outcome. Empty when there is no such term. */
  readonly telling: readonly SeparatedLevel[];
}

/**
 * Rows to keep when every level of which none or all rows are devoiced is set aside, in rounds until none is left.
 * Where all rows of a level have one outcome the likelihood grows for ever along its coefficient, and in that limit
 * those rows add nothing: the other coefficients are the same with or without them. Stops at a term that tells every
 * outcome, of which nothing would be left.
 */
export function setAsideSeparated(
  columns: Readonly<Record<string, DataColumn>>,
  usable: Uint8Array,
  devoiced: Float64Array,
): SetAside {
  const kept = usable.slice();
  const separated: SeparatedLevel[] = [];
  for (;;) {
    const { alike, present } = separatedIn(columns, kept, devoiced);
    const levels = alike.map(({ code: _, ...level }) => level);
    if (alike.length === 0 || alike.length === present) return { kept, separated, telling: levels };
    separated.push(...levels);
    for (const { term, code } of alike) {
      const column = columns[term]!;
      if (column instanceof Float64Array) continue;
      for (let i = 0; i < kept.length; i++) if (column.codes[i] === code) kept[i] = 0;
    }
  }
}

/** The first term with levels of one outcome: those levels, and how many it has in all. */
function separatedIn(
  columns: Readonly<Record<string, DataColumn>>,
  kept: Uint8Array,
  devoiced: Float64Array,
) {
  for (const [term, column] of Object.entries(columns)) {
    if (column instanceof Float64Array) continue;
    const { tokens, devoiced: hits } = levelCounts(column, kept, devoiced);
    const present = tokens.filter((n) => n > 0).length;
    const alike = column.labels.flatMap((label, code) =>
      label !== null && tokens[code]! > 0 && (hits[code] === 0 || hits[code] === tokens[code])
        ? [{ term, level: label, tokens: tokens[code]!, devoiced: hits[code]!, code }]
        : [],
    );
    if (present > 1 && alike.length > 0) return { alike, present };
  }
  return { alike: [], present: 0 };
}
