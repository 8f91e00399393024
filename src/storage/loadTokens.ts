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
import { readColumns } from "./readColumns.ts";
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
  const read = async (name: string) => {
    const column = (await readColumns(path, [name]))[name];
    if (column === undefined) throw new UserError(missingTokenColumn(name));
    return column;
  };
  const labels: Record<string, TokenTable["labels"]["phone"]> = {};
  const numbers: Record<string, Float64Array> = {};
  const recordings = recordingsOf(await Promise.all(["dataset", "speaker", "utterance"].map(read)));
  const every = Math.max(1, Math.ceil(recordings.length / most));
  const rows = every === 1 ? null : rowsOfEvery(recordings, every);
  const size = rows?.length ?? recordings.length;
  const own = async (name: string) => {
    const column = await read(name);
    return rows === null ? column : Array.from(rows, (row) => column[row]);
  };
  for (const name of labelColumns) labels[name] = labelColumn(await own(name), size);
  for (const name of numberColumns) numbers[name] = numberColumn(await own(name), size);
  const table = { size, labels: labels as TokenTable["labels"], numbers: numbers as TokenTable["numbers"] };
  return { table, every, of: recordings.length };
}

/** The number of each row's recording, numbered as met; all label sets of a recording share it. */
function recordingsOf(keys: readonly (readonly unknown[])[]): Uint32Array {
  const places = new Map<string, number>();
  return Uint32Array.from({ length: keys[0]!.length }, (_, row) => {
    const key = keys.map((column) => column[row]).join("\u0000");
    const place = places.get(key) ?? places.size;
    places.set(key, place);
    return place;
  });
}

function rowsOfEvery(recordings: Uint32Array, every: number): Uint32Array {
  const rows: number[] = [];
  for (const [row, recording] of recordings.entries()) if (recording % every === 0) rows.push(row);
  return Uint32Array.from(rows);
}
