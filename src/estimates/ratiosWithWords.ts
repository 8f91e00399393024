import { type Basis, isEvidence } from "../basis.ts";
import { crossedRatio } from "./crossedRatio.ts";
import { filterRestrictions } from "./filter.ts";
import { selectContrast, sides } from "./lengthContrast.ts";
import type { RatioOptions, RatioRow, Ratios } from "./ratios.ts";
import { selectWhere } from "./selection.ts";
import { labelAt, type TokenTable } from "./tokenTable.ts";
import { voicedRatio } from "./voicedRatio.ts";
import { countWords, grouped, selectable } from "./words.ts";

/**
 * The same ratios with what only tokens can tell: the number of words behind each, the interval that also allows for
 * words, and for vowels the ratio without devoiced ones. All null where the tokens are not those of the row, and the
 * first two where words are unknown.
 */
export function ratiosWithWords(ratios: Ratios, table: TokenTable, options: RatioOptions): Ratios {
  const { contrast, filter, surroundings = "consonants", floor = "keep" } = options;
  const compared = selectContrast(selectable(table), filterRestrictions(filter), contrast, surroundings);
  const kept =
    floor === "keep"
      ? compared
      : selectWhere(compared, (row) => labelAt(table.labels.atFloor, row) !== "true");
  const rowsOf = grouped(table, kept, ratios.rows, "timeBasis");
  return {
    ...ratios,
    rows: ratios.rows.map((row): RatioRow => {
      const phones = new Set(row.phones);
      const own = rowsOf(row).filter((at) => phones.has(labelAt(table.labels.phone, at) ?? ""));
      if (own.length !== row.tokens) return row;
      const words = countWords(table, own);
      const { estimate, low, high, level } = row;
      if (estimate === null || low === null || high === null) return { ...row, words };
      const sounds = soundsOf(table, own, sides[contrast].long);
      return {
        ...row,
        words,
        crossed: words === null ? null : crossedRatio(sounds, { estimate, low, high }, level),
        voiced: contrast === "vowel-length" ? voicedRatio(sounds, devoicedOf(table, own), level) : null,
      };
    }),
  };
}

function soundsOf({ labels, numbers }: TokenTable, rows: readonly number[], long: string) {
  const unknownWords = labels.word.labels.length;
  return {
    speaker: rows.map((row) => labels.speaker.codes[row]!),
    phone: rows.map((row) => labels.phone.codes[row]!),
    word: rows.map((row) =>
      labelAt(labels.word, row) === null ? unknownWords + row : labels.word.codes[row]!,
    ),
    long: rows.map((row) => (labelAt(labels.length, row) === long ? 1 : 0)),
    logMs: rows.map((row) => Math.log(numbers.durationMs[row]!)),
  };
}

/** 1 for vowels that somebody or a measurement found devoiced; a mark from a text rule says nothing of the sound. */
function devoicedOf({ labels }: TokenTable, rows: readonly number[]): number[] {
  return rows.map((row) => {
    const basis = labelAt(labels.devoicedBasis, row) as Basis | null;
    return basis !== null && isEvidence(basis) && labelAt(labels.devoiced, row) === "true" ? 1 : 0;
  });
}
