import { type Basis, isEvidence } from "../../basis.ts";
import { isVoiceless } from "../../phonology/phones.ts";
import type { CategoricalColumn } from "../../statistics/models/term.ts";
import { type LabelColumn, labelAt, labelColumns, type TokenTable } from "../tokenTable.ts";

/** What vowels are told apart by. */
export const vowelWordColumns = [
  ...(["dataset", "labelSet", "speaker", "phone", "length", "before", "after", "position"] as const),
  ...(["accented", "devoiceableNeighbour", "devoiced", "devoicedBasis"] as const),
] as const satisfies readonly LabelColumn[];
type Column = (typeof vowelWordColumns)[number];

/**
 * Vowels with a devoicing mark that is evidence, one by one, with a number for the word each stands in: enough for
 * intervals that allow for words, and no more. The words themselves are not among it.
 */
export interface VowelWords {
  /** `all` vowels; /i/ and /u/ after a voiceless consonant (`high`); or none, since these too are `too-many`. */
  readonly kept: "all" | "high" | "too-many";
  readonly labels: Readonly<Record<Column, readonly (string | null)[]>>;
  readonly codes: Readonly<Record<Column, readonly number[]>>;
  /** Number of the word; −1 where it is unknown. */
  readonly word: readonly number[];
}

/** Vowels up to which a page carries them, some 25 bytes each (our choice, no published source). */
export const mostVowelWords = 30_000;

/** The vowels of all label sets, in the order of the table. */
export function vowelWords(table: TokenTable, most = mostVowelWords): VowelWords {
  const { labels } = table;
  const marked: number[] = [];
  for (let row = 0; row < table.size; row++) {
    const basis = labelAt(labels.devoicedBasis, row);
    if (labelAt(labels.kind, row) !== "vowel" || labelAt(labels.devoiced, row) === null) continue;
    if (basis !== null && isEvidence(basis as Basis)) marked.push(row);
  }
  if (marked.length <= most) return columnsOf(table, marked, "all");
  const high = marked.filter(
    (row) =>
      ["i", "u"].includes(labelAt(labels.phone, row) ?? "") && isVoiceless(labelAt(labels.before, row) ?? ""),
  );
  return high.length <= most ? columnsOf(table, high, "high") : columnsOf(table, [], "too-many");
}

function columnsOf(table: TokenTable, rows: readonly number[], kept: VowelWords["kept"]): VowelWords {
  const numbered = (column: LabelColumn) => {
    const names: (string | null)[] = [];
    const places = new Map<string | null, number>();
    const codes = rows.map((row) => {
      const name = labelAt(table.labels[column], row);
      const place = places.get(name) ?? names.push(name) - 1;
      places.set(name, place);
      return place;
    });
    return { names, codes };
  };
  const columns = vowelWordColumns.map((name) => [name, numbered(name)] as const);
  const byColumn = <T>(of: (column: ReturnType<typeof numbered>) => T) =>
    Object.fromEntries(columns.map(([name, column]) => [name, of(column)])) as Record<Column, T>;
  const word = numbered("word");
  return {
    kept,
    labels: byColumn(({ names }) => names),
    codes: byColumn(({ codes }) => codes),
    word: word.codes.map((code) => (word.names[code] === null ? -1 : code)),
  };
}

/** They as a table of tokens, for `ratesWithWords`; words go by their numbers, and what is not carried is unknown. */
export function tableOfVowelWords({ labels, codes, word }: VowelWords): TokenTable {
  const size = word.length;
  const words = 1 + word.reduce((most, code) => Math.max(most, code), -1);
  const columns: Record<string, CategoricalColumn> = {};
  for (const name of labelColumns) columns[name] = { codes: new Uint8Array(size), labels: [null] };
  for (const name of vowelWordColumns)
    columns[name] = { codes: Uint32Array.from(codes[name]), labels: [...labels[name]] };
  columns.kind = { codes: new Uint8Array(size), labels: ["vowel"] };
  columns.word = {
    codes: Uint32Array.from(word, (code) => (code < 0 ? words : code)),
    labels: [...Array.from({ length: words }, (_, code) => String(code)), null],
  };
  return { size, labels: columns as TokenTable["labels"], numbers: {} as TokenTable["numbers"] };
}
