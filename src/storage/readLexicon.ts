import { statSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { parse } from "csv-parse/sync";
import * as v from "valibot";
import {
  lexiconLineUnreadable,
  lexiconNoFile,
  lexiconReadingNotKana,
  lexiconTooLarge,
} from "../messages/phonology.ts";
import { UserError } from "../messages/userError.ts";
import { kanaToMorae } from "../phonology/kana.ts";
import type { LexiconEntry } from "../phonology/readingTypes.ts";
import { readTextFile } from "./fileTreeText.ts";

const Columns = v.tupleWithRest(
  [v.pipe(v.string(), v.minLength(1)), v.pipe(v.string(), v.minLength(1))],
  v.string(),
);

interface Line {
  readonly record: unknown;
  readonly info: { readonly lines: number };
}

function readLines(text: string, file: string): { columns: string[]; line: number }[] {
  const parsed = parse(text, {
    delimiter: "\t",
    quote: null,
    comment: "#",
    comment_no_infix: true,
    trim: true,
    bom: true,
    info: true,
    relax_column_count: true,
    skip_empty_lines: true,
  }) as unknown as Line[];
  return parsed.map(({ record, info }) => {
    const columns = v.safeParse(Columns, record);
    if (!columns.success) throw new UserError(lexiconLineUnreadable(file, info.lines));
    return { columns: [...columns.output], line: info.lines };
  });
}

function checkKana(reading: string, file: string, line: number): string {
  const { morae, unknown } = kanaToMorae(reading);
  if (unknown.length > 0 || morae.length === 0)
    throw new UserError(lexiconReadingNotKana(file, line, reading));
  return reading;
}

/** The words of a lexicon's text: surface, reading in kana, and if given its accent; `#` starts a comment line. */
export function parseLexicon(text: string, file: string): LexiconEntry[] {
  return readLines(text, file).map(({ columns: [surface, reading, accent], line }) => ({
    surface: surface!,
    reading: checkKana(reading!, file, line),
    accent: accent ? accent : null,
  }));
}

/** The project's corrections, with the other readings in use in the third column. */
export function parseCorrections(text: string, file: string): LexiconEntry[] {
  return readLines(text, file).map(({ columns: [surface, reading, others], line }) => ({
    surface: surface!,
    reading: checkKana(reading!, file, line),
    accent: null,
    alternatives: (others ?? "")
      .split(" ")
      .filter((other) => other !== "")
      .map((other) => checkKana(other, file, line)),
  }));
}

/** Far more than the largest dictionaries of readings take (our choice, no published source). */
const mostLexiconMb = 64;

/** Throws a UserError for a path that is no regular file, as a device that never ends, or for one too large to be a lexicon. */
export function refuseLexicon(path: string): void {
  const stats = statSync(path, { throwIfNoEntry: false });
  if (stats === undefined) return; // whoever reads it says that it is not there
  if (!stats.isFile()) throw new UserError(lexiconNoFile(path));
  if (stats.size > mostLexiconMb * 2 ** 20) throw new UserError(lexiconTooLarge(path, mostLexiconMb));
}

/** Reads the user's lexicon; throws a UserError that names the file, and the line when a line cannot be used. */
export async function readLexicon(path: string): Promise<LexiconEntry[]> {
  refuseLexicon(path);
  return parseLexicon(readTextFile(path), path);
}

/** The corrections that come with the project. */
export async function readReadingCorrections(): Promise<LexiconEntry[]> {
  const path = fileURLToPath(new URL("../../data/reference/reading-corrections.tsv", import.meta.url));
  return parseCorrections(await readFile(path, "utf8"), "data/reference/reading-corrections.tsv");
}
