import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { TokenRow } from "../../../src/measures/columns.ts";
import { loadCells } from "../../../src/storage/loadCells.ts";
import { loadSomeTokens, loadTokens, loadTokensForWords } from "../../../src/storage/loadTokens.ts";
import { openResultsFolder } from "../../../src/storage/resultsFolder.ts";
import { ResultsWriter } from "../../../src/storage/resultsWriter.ts";
import { plainToken } from "../estimates/sampleTokens.ts";

const folder = mkdtempSync(join(tmpdir(), "tokens-"));
const [recordings, each] = [10, 7];

beforeAll(async () => {
  const results = await openResultsFolder(folder, "test\n");
  const writer = await ResultsWriter.open(results, 64);
  for (let u = 0; u < recordings; u++)
    for (let row = 0; row < each; row++)
      writer.tokens.append({
        ...{
          ...plainToken,
          labelSet: row < 4 ? "first" : "second",
          utterance: `u${u}`,
          index: row < 4 ? row : row - 4,
          word: `w${row % 3}`,
          startMs: 0,
          endMs: 60,
          closureMs: null,
        },
        ...{ phraseMorae: 5, moraInPhrase: 2, speechRateMoraePerSec: 7 },
      } as unknown as TokenRow);
  await writer.finish();
  writer.close();
  await results.close();
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("loadSomeTokens", () => {
  test("reads all where they are no more than asked for", async () => {
    const some = await loadSomeTokens(folder, recordings * each);
    expect([some.every, some.of, some.table.size]).toEqual([1, 70, 70]);
    expect(some.table).toEqual(await loadTokens(folder));
  });

  test("else reads every n-th recording, each whole, with all its label sets", async () => {
    const { table, every, of } = await loadSomeTokens(folder, 30);
    expect([every, of, table.size]).toEqual([3, 70, 4 * each]);
    const names = Array.from(table.labels.utterance.codes, (code) => table.labels.utterance.labels[code]);
    expect([...new Set(names)]).toEqual(["u0", "u3", "u6", "u9"]);
    const sets = Array.from(table.labels.labelSet.codes, (code) => table.labels.labelSet.labels[code]);
    expect(sets.filter((set) => set === "first")).toHaveLength(4 * 4);
    expect(sets.filter((set) => set === "second")).toHaveLength(4 * 3);
  });
});

test("loadTokensForWords reads the tokens behind cells, but not for a corpus too large, nor where there are none", async () => {
  const cells = await loadCells(folder);
  expect((await loadTokensForWords(folder, cells))!.size).toBe(70);
  expect(await loadTokensForWords(folder, { tokens: Float64Array.of(400_001) })).toBeNull();
  const empty = mkdtempSync(join(tmpdir(), "tokens-none-"));
  expect(await loadTokensForWords(empty, cells)).toBeNull();
  rmSync(empty, { recursive: true });
});
