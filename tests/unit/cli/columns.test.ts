import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { markColumns } from "../../../reports/components/listen/markStore.ts";
import { registerColumns } from "../../../src/cli/columns.ts";
import { blocksOfExplanation } from "../../../src/cli/explainModelBlocks.ts";
import { blocksOfColouring, blocksOfError } from "../../../src/cli/explainSmallBlocks.ts";
import { blocksOfTiming } from "../../../src/cli/explainTimingBlocks.ts";
import { blocksOfVowelSpace } from "../../../src/cli/explainVowelBlocks.ts";
import { type Block, formatBlocks } from "../../../src/cli/printBlocks.ts";
import { formatEstimates } from "../../../src/cli/printEstimates.ts";
import { runExplanations } from "../../../src/estimates/explain/runExplanations.ts";
import { tokenTableOfRows } from "../../../src/estimates/tokenTable.ts";
import { wordRowColumns } from "../../../src/findings/words/wordRows.ts";
import { csvTables } from "../../../src/messages/csvColumns.ts";
import { rateCsvColumns, ratioCsvColumns } from "../../../src/messages/estimateColumns.ts";
import { explainCsvColumns } from "../../../src/messages/explainColumns.ts";
import { loadFormantTables, loadRhythmTables } from "../../../src/storage/loadReferenceTables.ts";
import { keyColumns, sheetColumns } from "../../../src/storage/readMarks.ts";
import { runCommand } from "../../helpers/runCommand.ts";
import { inventVowels } from "../estimates/explain/inventVowels.ts";
import { rateRow, ratioRow } from "../findings/rows.ts";

const columnsOf = (csv: string) => (parse(csv, { to: 1 }) as string[][])[0]!;

test("rates and ratios print the cuts and every column that is documented, filled or not", () => {
  const bounds = { low: 1, high: 2 };
  const corrected = { estimate: 0.1, unclipped: 0.1, ...bounds };
  const rich = rateRow({ corrected, crossed: { ...bounds, widest: "words" } });
  for (const row of [rateRow(), rich]) {
    const printed = columnsOf(formatEstimates([row], "csv", [], rateCsvColumns));
    expect(printed).toEqual(["phone", ...Object.keys(rateCsvColumns)]);
  }
  const filled = parse(formatEstimates([rich], "csv", [], rateCsvColumns), { columns: true }) as object[];
  expect(filled[0]).toMatchObject({ correctedLow: "1", crossedWidest: "words", equalWeightLow: "" });
  const ratios = columnsOf(formatEstimates([ratioRow()], "csv", [], ratioCsvColumns));
  expect(ratios).toEqual(["phone", ...Object.keys(ratioCsvColumns)]);
});

/** Vowels and consonants that answer every question that `explain` knows. */
function invented() {
  const vowels = inventVowels({ seed: 5, speakers: 6, words: 30, tokens: 90 });
  return vowels.flatMap((vowel, i) => {
    const at = { ...vowel, utterance: `u${i}`, word: vowel.word, startMs: 100, endMs: 160, moraInPhrase: 2 };
    const heard = { f0Hz: 120, devoicedHeard: false, devoicedProbability: vowel.devoiced ? 0.9 : 0.1 };
    const phone = i % 7 < 3 ? "i" : "u";
    return [
      {
        ...at,
        index: 0,
        kind: "consonant",
        phone: "sh",
        startMs: 50,
        endMs: 100,
        fricationCentreHz: 4000 + i,
      },
      { ...at, index: 1, kind: "vowel", phone, before: "sh", length: "short", devoicedHeard: vowel.devoiced },
      ...["a", "i", "u", "e", "o"].map((phone, k) => ({
        ...{ ...at, ...heard, index: 2 + k, kind: "vowel", phone, devoiced: false },
        ...{
          length: i % 5 < 2 ? "long" : "short",
          f1Hz: 300 + 90 * k + (i % 7),
          f2Hz: 900 + 300 * k + (i % 5),
        },
      })),
    ];
  });
}

test("explain prints no column that is not documented, and documents none that it never prints", async () => {
  const found = runExplanations(tokenTableOfRows(invented()), 0.9, []);
  const [formants, rhythm] = [await loadFormantTables(), await loadRhythmTables()];
  const blocks: Block[] = [
    ...[...found.devoicing, ...found.duration].flatMap(blocksOfExplanation),
    ...found.vowelSpace.flatMap((space) => blocksOfVowelSpace(space, formants)),
    ...found.colouring.flatMap(blocksOfColouring),
    ...found.timing.flatMap((timing) => blocksOfTiming(timing, rhythm)),
    ...found.decisionError.flatMap(blocksOfError),
  ];
  const printed = columnsOf(formatBlocks(blocks, "csv")).map((name) => name.replace(/^90 %/, "95 %"));
  expect(printed.toSorted()).toEqual(Object.keys(explainCsvColumns).toSorted());
});

test("sheets, keys, words and readers' marks have the columns that are documented", () => {
  const documented = (name: string) => Object.keys(csvTables[name]!.columns);
  expect(documented("sheet")).toEqual([...sheetColumns]);
  expect(documented("key")).toEqual([...keyColumns]);
  expect(documented("words")).toEqual([...wordRowColumns]);
  expect(documented("corrections")).toEqual([...markColumns]);
});

test("columns tells every column of a table, or of all of them, for people and programs", async () => {
  const { out } = await runCommand(registerColumns, "columns", "ratios");
  for (const [name, meaning] of Object.entries(ratioCsvColumns)) {
    expect(out).toMatch(new RegExp(`^ {2}${name} `, "m"));
    expect(out).toContain(meaning);
  }
  expect(out).toContain("accented");
  expect(out).not.toContain("correctedLow");
  const all = JSON.parse((await runCommand(registerColumns, "columns", "--format", "json")).out);
  expect(Object.keys(all)).toEqual([...Object.keys(csvTables), "cuts"]);
});
