import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Cells } from "../estimates/cells.ts";
import {
  labelColumn,
  labelColumns,
  numberColumn,
  numberColumns,
  type TokenTable,
} from "../estimates/tokenTable.ts";
import { missingTokenColumn } from "../messages/explain.ts";
import { UserError } from "../messages/userError.ts";
import { readPieces, rowsOfTable } from "./readColumns.ts";
import { resultFiles, resultPath } from "./resultsFolder.ts";

/** Tokens of whole recordings: all, or those of every n-th recording. */
export interface SomeTokens {
  readonly table: TokenTable;
  readonly every: number;
  /** Tokens of all recordings. */
  readonly of: number;
}

/** The tokens of a results folder. Columns are read one after the other, so that memory holds one of them at a time. */
export async function loadTokens(resultsFolder: string): Promise<TokenTable> {
  return (await loadSomeTokens(resultsFolder, Number.POSITIVE_INFINITY)).table;
}

/** Vowels and consonants up to which tokens are read where cells would do, so that words can be counted. */
const mostForWords = 400_000;

/** The tokens behind these cells; null where they are too many to be read for words alone, or not in the folder. */
export async function loadTokensForWords(
  resultsFolder: string,
  cells: Pick<Cells, "tokens">,
): Promise<TokenTable | null> {
  const tokens = cells.tokens.reduce((sum, count) => sum + count, 0);
  const there = existsSync(join(resultsFolder, resultFiles.tokens));
  return there && tokens <= mostForWords ? loadTokens(resultsFolder) : null;
}

/** The same, but of every n-th recording where all would be more than `most` tokens; n is as small as it can be. */
export async function loadSomeTokens(resultsFolder: string, most: number): Promise<SomeTokens> {
  const path = await resultPath(resultsFolder, "tokens");
  const of = await rowsOfTable(path);
  const every = Math.max(1, Math.ceil(of / most));
  const chosen = every === 1 ? null : await rowsOfEvery(path, every);
  const size = chosen?.size ?? of;
  const labels: Record<string, TokenTable["labels"]["phone"]> = {};
  const numbers: Record<string, Float64Array> = {};
  for (const name of labelColumns) labels[name] = labelColumn(await readSome(path, name, size, chosen), size);
  for (const name of numberColumns)
    numbers[name] = numberColumn(await readSome(path, name, size, chosen), size);
  const table = { size, labels: labels as TokenTable["labels"], numbers: numbers as TokenTable["numbers"] };
  return { table, every, of };
}

/** Rows of a table that are wanted, by the pieces that it is read in: places within each piece. */
interface ChosenRows {
  readonly size: number;
  readonly inPieces: readonly Uint32Array[];
}

/** One column of the wanted rows (null: of all), read piece by piece. */
async function readSome(
  path: string,
  name: string,
  size: number,
  chosen: ChosenRows | null,
): Promise<unknown[]> {
  const values = new Array<unknown>(size);
  let at = 0;
  let pieces = 0;
  for await (const piece of readPieces(path, [name])) {
    const column = columnOf(piece, name);
    const rows = chosen?.inPieces[pieces++] ?? null;
    if (rows === null) for (const value of column) values[at++] = value;
    else for (const row of rows) values[at++] = column[row];
  }
  return values;
}

const recordingColumns = ["dataset", "speaker", "utterance"] as const;

/** Rows of every n-th recording, numbered as met; all label sets of a recording share its number. */
async function rowsOfEvery(path: string, every: number): Promise<ChosenRows> {
  const places = new Map<string, number>();
  const inPieces: Uint32Array[] = [];
  let size = 0;
  let before: { readonly ids: readonly unknown[]; readonly place: number } = { ids: [], place: -1 };
  for await (const piece of readPieces(path, recordingColumns)) {
    const columns = recordingColumns.map((name) => columnOf(piece, name));
    const placeOf = (row: number) => {
      const ids = columns.map((column) => column[row]);
      const key = ids.join("\u0000");
      const place = places.get(key) ?? places.size;
      places.set(key, place);
      return { ids, place };
    };
    const rows: number[] = [];
    for (let row = 0; row < columns[0]!.length; row++) {
      const { ids } = before;
      if (columns.some((column, i) => column[row] !== ids[i])) before = placeOf(row);
      if (before.place % every === 0) rows.push(row);
    }
    inPieces.push(Uint32Array.from(rows));
    size += rows.length;
  }
  return { size, inPieces };
}

function columnOf(piece: Readonly<Record<string, unknown[]>>, name: string): unknown[] {
  const column = piece[name];
  if (column === undefined) throw new UserError(missingTokenColumn(name));
  return column;
}
