import type { CategoricalColumn } from "../../statistics/models/term.ts";
import { labelAt, type TokenTable } from "../tokenTable.ts";

/** A column of the chosen rows with its labels renamed, in the given order; names outside it are unknown. */
export function renamed(
  column: CategoricalColumn,
  rows: Uint32Array,
  order: readonly string[],
  nameOf: (label: string) => string | null = (label) => label,
): CategoricalColumn {
  const place = column.labels.map((label) => {
    const name = label === null ? null : nameOf(label);
    const at = name === null ? -1 : order.indexOf(name);
    return at < 0 ? order.length : at;
  });
  return { codes: Uint32Array.from(rows, (row) => place[column.codes[row]!]!), labels: [...order, null] };
}

/** A number of the chosen rows, about its mean, NaN where unknown. */
export function centred(values: Float64Array, rows: Uint32Array): Float64Array {
  const own = Float64Array.from(rows, (row) => values[row]!);
  let sum = 0;
  let known = 0;
  for (const value of own) {
    if (Number.isNaN(value)) continue;
    sum += value;
    known++;
  }
  const mean = known === 0 ? 0 : sum / known;
  return own.map((value) => value - mean);
}

/** What stands for the word, so that sounds of one word are not taken for independent. */
export interface Items {
  readonly unit: "word" | "sound frame";
  readonly column: CategoricalColumn;
}

/** Share of tokens whose value must be known for a column to be used; the others are then left out. */
export const leastKnown = 0.8;

/**
 * Words of the chosen rows, or, where they are known for too few, the frame of sounds (C1, vowel, C2), which tokens of
 * one word share as well.
 */
export function itemsOf({ labels }: TokenTable, rows: Uint32Array): Items {
  if (knownShare(labels.word, rows) >= leastKnown)
    return { unit: "word", column: compact(rows, (row) => labelAt(labels.word, row)) };
  const frame = (row: number) =>
    [labels.before, labels.phone, labels.after].map((column) => labelAt(column, row) ?? "?").join(" ");
  return { unit: "sound frame", column: compact(rows, frame) };
}

export function speakersOf({ labels }: TokenTable, rows: Uint32Array): CategoricalColumn {
  return compact(rows, (row) => labelAt(labels.speaker, row));
}

/** Share of the rows with a known label, 0 to 1; 0 without rows. */
export function knownShare({ codes, labels }: CategoricalColumn, rows: Uint32Array): number {
  let known = 0;
  for (const row of rows) if ((labels[codes[row]!] ?? null) !== null) known++;
  return rows.length === 0 ? 0 : known / rows.length;
}

function compact(rows: Uint32Array, labelOf: (row: number) => string | null): CategoricalColumn {
  const place = new Map<string | null, number>();
  const codes = Uint32Array.from(rows, (row) => {
    const label = labelOf(row);
    let code = place.get(label);
    if (code === undefined) {
      code = place.size;
      place.set(label, code);
    }
    return code;
  });
  return { codes, labels: [...place.keys()] };
}
