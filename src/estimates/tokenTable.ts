import { missingTokenColumn, raggedTokenColumn } from "../messages/explain.ts";
import { UserError } from "../messages/userError.ts";
import type { CategoricalColumn } from "../statistics/models/term.ts";
import type { ColumnArrays } from "./cellsFromColumns.ts";

/** Columns of tokens.parquet that are kept as labels; booleans are spelled `"true"`/`"false"`. */
export const labelColumns = [
  "dataset",
  "labelSet",
  "speaker",
  "utterance",
  "kind",
  "phone",
  "length",
  "before",
  "after",
  "position",
  "accented",
  "devoiceableNeighbour",
  "word",
  "timeBasis",
  "atFloor",
  "devoiced",
  "devoicedBasis",
  "devoicedHeard",
] as const;
export type LabelColumn = (typeof labelColumns)[number];

/** Columns that are kept as numbers. */
export const numberColumns = [
  "index",
  "startMs",
  "endMs",
  "durationMs",
  "moraInPhrase",
  "speechRateMoraePerSec",
  "f0Hz",
  "f1Hz",
  "f2Hz",
  "devoicedProbability",
  "fricationCentreHz",
  "releaseCentreHz",
] as const;
export type NumberColumn = (typeof numberColumns)[number];

/** Columns without which no question about tokens can be asked. */
const needed: readonly string[] = ["dataset", "labelSet", "speaker", "kind", "phone"];

/** Vowels and consonants, one a row, in the order of the recordings; all columns have `size` rows. */
export interface TokenTable {
  readonly size: number;
  /** A null label means unknown. */
  readonly labels: Readonly<Record<LabelColumn, CategoricalColumn>>;
  /** NaN where the value is missing or no finite number. */
  readonly numbers: Readonly<Record<NumberColumn, Float64Array>>;
}

/**
 * Tokens from the columns of `tokens.parquet`, whoever read them. Columns that a results folder lacks (acoustic ones
 * without recordings) count as unknown throughout. Throws a UserError when an indispensable one is missing or the
 * lengths differ.
 */
export function tokenTable(columns: ColumnArrays): TokenTable {
  const size = columns.phone?.length ?? 0;
  for (const name of needed) if (columns[name] === undefined) throw new UserError(missingTokenColumn(name));
  for (const name of [...labelColumns, ...numberColumns]) {
    const length = columns[name]?.length ?? size;
    if (length !== size) throw new UserError(raggedTokenColumn(name, length, size));
  }
  return {
    size,
    labels: Object.fromEntries(
      labelColumns.map((name) => [name, labelColumn(columns[name], size)]),
    ) as TokenTable["labels"],
    numbers: Object.fromEntries(
      numberColumns.map((name) => [name, numberColumn(columns[name], size)]),
    ) as TokenTable["numbers"],
  };
}

/** The same from rows; fields that a row lacks are unknown. */
export function tokenTableOfRows(rows: readonly Readonly<Record<string, unknown>>[]): TokenTable {
  const names = [...labelColumns, ...numberColumns];
  return tokenTable(Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name] ?? null)])));
}

/** Labels numbered as met; null and undefined are unknown. */
export function labelColumn(values: ArrayLike<unknown> | undefined, size: number): CategoricalColumn {
  if (values === undefined) return { codes: new Uint8Array(size), labels: [null] };
  const place = new Map<unknown, number>();
  const labels: (string | null)[] = [];
  const codes = new Uint32Array(size);
  for (let i = 0; i < size; i++) {
    const value = values[i] ?? null;
    let code = place.get(value);
    if (code === undefined) {
      code = labels.push(value === null ? null : String(value)) - 1;
      place.set(value, code);
    }
    codes[i] = code;
  }
  return { codes, labels };
}

export function numberColumn(values: ArrayLike<unknown> | undefined, size: number): Float64Array {
  const numbers = new Float64Array(size).fill(Number.NaN);
  if (values === undefined) return numbers;
  for (let i = 0; i < size; i++) {
    const value = values[i];
    const number = value === null || value === undefined ? Number.NaN : Number(value);
    if (Number.isFinite(number)) numbers[i] = number;
  }
  return numbers;
}

/** The label of a row, null where unknown. */
export function labelAt({ codes, labels }: CategoricalColumn, row: number): string | null {
  return labels[codes[row]!] ?? null;
}
