import { isEvidence } from "../basis.ts";
import type { Cells } from "./cells.ts";
import { type CrossedRate, crossedRate } from "./crossedRate.ts";
import type { Dim } from "./dimensions.ts";
import { filterRestrictions } from "./filter.ts";
import type { RateOptions, RateRow, Rates } from "./rates.ts";
import { selectCells, selectWhere } from "./selection.ts";
import { labelAt, type TokenTable } from "./tokenTable.ts";

/** Share of a row's tokens whose word must be known for words to be counted. */
const leastKnown = 0.8;

/** An interval that also allows for words, and which clustering made it as wide as it is. */
export type CrossedInterval = Pick<CrossedRate, "low" | "high" | "widest">;

/**
 * The same rates with the number of words behind each and, for several speakers, the interval that is clustered by speaker and by
 * word, the widest counting. Cells hold no words, so that it takes the tokens the cells were made from. Null where words
 * are unknown or the tokens are not those of the row.
 */
export function ratesWithWords(rates: Rates, table: TokenTable, options: RateOptions): Rates {
  const asCells = selectable(table);
  const vowels = selectCells(asCells, [
    ...filterRestrictions(options.filter),
    { dim: "kind", accepts: (kind) => kind === "vowel" },
    { dim: "devoicedBasis", accepts: (basis) => basis !== null },
  ]);
  const marked = selectWhere(vowels, (row) => labelAt(table.labels.devoiced, row) !== null);
  const rowsOf = grouped(table, marked, rates.rows, "devoicedBasis");
  return {
    ...rates,
    rows: rates.rows.map((row) => {
      const own = rowsOf(row);
      const words = countWords(table, own);
      if (own.length !== row.tokens || words === null) return row;
      return { ...row, words, crossed: crossedOf(table, own, row) };
    }),
  };
}

/** Tokens have the columns that cells are chosen by. */
export function selectable({ size, labels }: TokenTable): Pick<Cells, "size" | "dimensions"> {
  return { size, dimensions: labels as unknown as Cells["dimensions"] };
}

type Row = Pick<RateRow, "by" | "dataset" | "labelSet" | "basis">;

/** Tokens by the columns that tell the rows apart. */
export function grouped(
  { labels }: TokenTable,
  chosen: Uint32Array,
  rows: readonly Row[],
  basis: "devoicedBasis" | "timeBasis",
): (row: Row) => readonly number[] {
  const dims = Object.keys(rows[0]?.by ?? {}) as Dim[];
  const columns = (["dataset", "labelSet", basis, ...dims] as const).map((name) => labels[name]);
  const groups = new Map<string, number[]>();
  for (const row of chosen) {
    const key = JSON.stringify(columns.map((column) => labelAt(column, row)));
    const own = groups.get(key);
    if (own) own.push(row);
    else groups.set(key, [row]);
  }
  return ({ by, dataset, labelSet, basis: of }) =>
    groups.get(JSON.stringify([dataset, labelSet, of, ...dims.map((dim) => by[dim] ?? null)])) ?? [];
}

export function countWords({ labels: { word } }: TokenTable, rows: readonly number[]): number | null {
  const known = rows.filter((row) => labelAt(word, row) !== null);
  if (rows.length === 0 || known.length < leastKnown * rows.length) return null;
  return new Set(known.map((row) => word.codes[row]!)).size;
}

/** A vowel whose word is unknown counts as a word of its own. */
function crossedOf({ labels }: TokenTable, rows: readonly number[], row: RateRow): CrossedInterval | null {
  if (!isEvidence(row.basis)) return null;
  const vowels = rows.map((at) => ({
    speaker: labelAt(labels.speaker, at) ?? "unknown",
    word: labelAt(labels.word, at) ?? `? ${at}`,
    devoiced: labelAt(labels.devoiced, at) === "true",
  }));
  const { low, high, widest } = crossedRate(vowels, row.level)!;
  return { low, high, widest };
}
