import { readFileSync } from "node:fs";
import { join } from "node:path";
import { asyncBufferFromFile, parquetMetadataAsync } from "hyparquet";
import { describe, expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import {
  cellColumns,
  type TokenRow,
  tokenColumns,
  tokenTableColumns,
} from "../../../src/measures/columns.ts";
import { loadCells } from "../../../src/storage/loadCells.ts";
import { readColumns } from "../../../src/storage/readColumns.ts";
import { openResultsFolder } from "../../../src/storage/resultsFolder.ts";
import { ResultsWriter } from "../../../src/storage/resultsWriter.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";

/** Rows with every combination of missing values, more than one chunk of them. */
function rows(count: number): TokenRow[] {
  return Array.from({ length: count }, (_, i) => ({
    dataset: "d",
    labelSet: "l",
    speaker: `s${i % 3}`,
    utterance: `u${i % 40}`,
    index: i,
    phone: "aiueo"[i % 5]!,
    kind: "vowel",
    length: i % 7 === 0 ? null : i % 2 === 0 ? "short" : "long",
    before: i % 4 === 0 ? "pause" : "k",
    after: "s",
    position: "medial",
    accented: i % 3 === 0 ? null : i % 3 === 1,
    devoiceableNeighbour: i % 2 === 0,
    word: i % 5 === 0 ? null : "語",
    startMs: i * 10,
    endMs: i * 10 + 30 + (i % 11) * 7.3,
    timeBasis: "aligned",
    confidence: i % 9 === 0 ? null : 0.5,
    durationMs: 30 + (i % 11) * 7.3,
    atFloor: i % 11 === 0,
    closureMs: null,
    phraseMorae: 5,
    moraInPhrase: 2,
    speechRateMoraePerSec: i % 6 === 0 ? null : 7.5,
    devoicedByAligner: i % 9 === 0 ? null : i % 2 === 0,
    devoiced: i % 8 === 0 ? null : i % 8 < 3,
    devoicedBasis: i % 8 === 0 ? null : "annotated",
  }));
}

async function write(folder: string, tokens: readonly TokenRow[]): Promise<void> {
  const results = await openResultsFolder(folder, "test\n");
  const writer = await ResultsWriter.open(results, 128);
  for (const token of tokens) writer.tokens.append(token);
  const counts = await writer.finish();
  expect(counts.tokens).toBe(tokens.length);
  writer.close();
  await results.close();
}

describe("ResultsWriter", () => {
  test("gives back every token as it was appended, missing values included", async () => {
    const folder = tempFolder();
    const tokens = rows(5000);
    await write(folder, tokens);
    const columns = await readColumns(join(folder, "tokens.parquet"));
    expect(Object.keys(columns)).toEqual(Object.keys(tokenTableColumns));
    for (const name of Object.keys(tokenColumns) as (keyof TokenRow)[])
      expect(columns[name]!.map((value) => value ?? null)).toEqual(tokens.map((token) => token[name]));
  });

  test("writes unit, description, source and missing-value meaning of every column into the file", async () => {
    const folder = tempFolder();
    await write(folder, rows(10));
    for (const [file, columns] of [
      ["tokens", tokenTableColumns],
      ["cells", cellColumns],
    ] as const) {
      const metadata = await parquetMetadataAsync(await asyncBufferFromFile(join(folder, `${file}.parquet`)));
      const stored = metadata.key_value_metadata?.find(({ key }) => key === "columns")?.value;
      expect(JSON.parse(stored!)).toEqual(columns);
    }
  });

  test("reduces tokens to the cells that counting in memory gives", async () => {
    const folder = tempFolder();
    const tokens = rows(5000);
    await write(folder, tokens);
    const written = await loadCells(folder);
    const counted = cellsFromTokens(tokens);
    expect(written.size).toBe(counted.size);
    const table = (cells: typeof written) =>
      Array.from({ length: cells.size }, (_, i) =>
        JSON.stringify([
          ...Object.values(cells.dimensions).map(({ codes, labels }) => labels[codes[i]!]),
          cells.tokens[i],
          cells.atFloor[i],
          cells.marked[i],
          cells.devoiced[i],
          ...[cells.sumMs[i], cells.sumSquareMs[i], cells.sumLogMs[i], cells.sumSquareLogMs[i]].map((sum) =>
            sum!.toPrecision(10),
          ),
          [...cells.histogramMs.subarray(cells.histogramStart[i], cells.histogramStart[i + 1])],
          [...cells.histogramTokens.subarray(cells.histogramStart[i], cells.histogramStart[i + 1])],
        ]),
      ).sort();
    expect(table(written)).toEqual(table(counted));
  });

  test("writes the same bytes for the same rows", async () => {
    const [first, second] = [tempFolder(), tempFolder()];
    await write(first, rows(5000));
    await write(second, rows(5000));
    for (const file of ["tokens.parquet", "cells.parquet"])
      expect(readFileSync(join(first, file)).equals(readFileSync(join(second, file)))).toBe(true);
  });
});
