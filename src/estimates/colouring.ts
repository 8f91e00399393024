import type { Basis } from "../basis.ts";
import {
  colouringModels,
  noColouringEvidence,
  noFrication,
  noSpectrumOf,
  onlyTwoConsonants,
  tooFewColoured,
  wordsUnknown,
} from "../messages/explain.ts";
import { colouringDifference, type Difference } from "./colouringDifference.ts";
import { consonantCentreHz } from "./consonantCentre.ts";
import { evidenceOf, type MarkedRows } from "./explain/evidence.ts";
import { itemsOf, renamed, speakersOf } from "./explain/modelColumns.ts";
import { type Source, sourcesOf } from "./explain/sources.ts";
import { speakerWarnings } from "./explain/speakerWarnings.ts";
import { labelAt, type TokenTable } from "./tokenTable.ts";

/** Consonants that stand before both /i/ and /u/ as the same phone. */
export const colouredConsonants = ["sh", "k"] as const;

/** Spectral centre of gravity of a consonant before /i/ minus the same before /u/. */
export interface Colouring {
  readonly consonant: (typeof colouredConsonants)[number];
  /** Whether the vowels after it were devoiced; voiced ones stand beside for comparison. */
  readonly vowel: "devoiced" | "voiced";
  readonly dataset: string;
  readonly labelSet: string;
  /** How devoicing is known; the centre of gravity is measured. */
  readonly basis: Basis | null;
  readonly level: number;
  readonly method: string;
  /** Hz; null with the reason. Above 0: brighter before /i/. */
  readonly difference: Difference | null;
  readonly reason: string | null;
  readonly beforeI: Side | null;
  readonly beforeU: Side | null;
  readonly tokens: number;
  readonly speakers: number;
  readonly words: number | null;
  readonly warnings: readonly string[];
}

export interface Side {
  readonly tokens: number;
  readonly meanHz: number;
}

/** Consonants wanted on each side before a difference is given. */
const leastTokens = 5;

/**
 * Does a consonant keep the colour of a vowel that is devoiced? Difference of the centre of gravity of /sh/ and /k/
 * before /i/ and before /u/. Expected above 0 and small for /sh/ (Beckman M. & Shoji A. (1984) Phonetica 41:61–71;
 * Whang J. (2018) JASA 143:1159–1172). The vowel is a trait of the word, so that intervals rest on the number of words.
 */
export function consonantColouring(
  table: TokenTable,
  { level = 0.95 }: { readonly level?: number } = {},
): Colouring[] {
  return sourcesOf(table).flatMap((source) =>
    colouredConsonants.flatMap((consonant) => {
      const coloured = colouredTokens(table, source, consonant);
      return (["devoiced", "voiced"] as const).map((vowel) =>
        compareColouring(table, source, coloured, consonant, vowel, level),
      );
    }),
  );
}

/** Vowels /i/ and /u/ after a consonant, and which of them can be compared. */
export interface ColouredTokens {
  /** Rows of all short /i/ and /u/ right after the consonant. */
  readonly after: Uint32Array;
  readonly evidence: MarkedRows;
  /** Rows of `evidence` whose consonant has a centre of gravity, by what became of the vowel. */
  readonly rows: Readonly<Record<Colouring["vowel"], Uint32Array>>;
}

/** The tokens that `consonantColouring` compares; the consonant is the row before the vowel's. */
export function colouredTokens(
  table: TokenTable,
  source: Source,
  consonant: Colouring["consonant"],
): ColouredTokens {
  const { labels } = table;
  const after = vowelsAfter(table, source).filter((row) => labelAt(labels.before, row) === consonant);
  const evidence = evidenceOf(table, after);
  const heard = evidence.rows.filter((row) => !Number.isNaN(consonantCentreHz(table, row - 1)));
  const marked = (devoiced: boolean) =>
    heard.filter((row) => (labelAt(labels.devoiced, row) === "true") === devoiced);
  return { after, evidence, rows: { devoiced: marked(true), voiced: marked(false) } };
}

/** One consonant before /i/ against before /u/, among the tokens of `colouredTokens`. */
export function compareColouring(
  table: TokenTable,
  { dataset, labelSet }: Source,
  { after, evidence, rows: compared }: ColouredTokens,
  consonant: Colouring["consonant"],
  vowel: Colouring["vowel"],
  level: number,
): Colouring {
  const { labels, numbers } = table;
  const rows = compared[vowel];
  const centreHz = Float64Array.from(rows, (row) => consonantCentreHz(table, row - 1));
  const [beforeI, beforeU] = ["i", "u"].map((name) =>
    sideOf(centreHz, rows, (row) => labelAt(labels.phone, row) === name),
  );
  const speakers = speakersOf(table, rows);
  const items = itemsOf(table, rows);
  const head = {
    ...{ consonant, vowel, dataset, labelSet, basis: evidence.basis, level, method: colouringModels() },
    ...{
      beforeI: beforeI ?? null,
      beforeU: beforeU ?? null,
      tokens: rows.length,
      speakers: speakers.labels.length,
    },
    words: items.unit === "word" ? items.column.labels.filter((label) => label !== null).length : null,
  };
  const refuse = (reason: string): Colouring => ({
    ...head,
    difference: null,
    reason,
    warnings: evidence.warnings,
  });
  if (numbers.fricationCentreHz.every(Number.isNaN) && numbers.releaseCentreHz.every(Number.isNaN))
    return refuse(noFrication());
  if (after.every((row) => Number.isNaN(consonantCentreHz(table, row - 1))))
    return refuse(noSpectrumOf(consonant));
  if (evidence.basis === null) return refuse(noColouringEvidence());
  const [i, u] = [beforeI?.tokens ?? 0, beforeU?.tokens ?? 0];
  if (i < leastTokens || u < leastTokens) return refuse(tooFewColoured(i, u, leastTokens));
  const vowelColumn = renamed(labels.phone, rows, ["u", "i"]);
  const found = colouringDifference(vowelColumn, centreHz, { speakers, items }, level);
  if ("reason" in found) return refuse(found.reason);
  return {
    ...head,
    ...{ difference: found.difference, reason: null },
    warnings: [
      ...evidence.warnings,
      ...speakerWarnings(head.speakers),
      ...(items.unit === "word" ? [] : [wordsUnknown()]),
      ...found.notices,
      onlyTwoConsonants(),
    ],
  };
}

/** Short /i/ and /u/ whose consonant is the row before, in the same recording. */
function vowelsAfter({ labels, numbers }: TokenTable, { rows }: Source): Uint32Array {
  return rows.filter(
    (row) =>
      row > 0 &&
      (labelAt(labels.phone, row) === "i" || labelAt(labels.phone, row) === "u") &&
      labelAt(labels.length, row) !== "long" &&
      labelAt(labels.phone, row - 1) === labelAt(labels.before, row) &&
      numbers.index[row - 1]! + 1 === numbers.index[row]! &&
      labels.utterance.codes[row - 1] === labels.utterance.codes[row] &&
      labels.dataset.codes[row - 1] === labels.dataset.codes[row] &&
      labels.labelSet.codes[row - 1] === labels.labelSet.codes[row],
  );
}

function sideOf(values: Float64Array, rows: Uint32Array, belongs: (row: number) => boolean): Side | null {
  const own = values.filter((_, i) => belongs(rows[i]!));
  return own.length === 0
    ? null
    : { tokens: own.length, meanHz: own.reduce((sum, x) => sum + x, 0) / own.length };
}
