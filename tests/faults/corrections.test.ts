import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { beforeAll, describe, expect, test } from "vitest";
import { runSummary } from "../../src/cli/runSummary.ts";
import { correctionsAreNoSample } from "../../src/messages/corrections.ts";
import { correctionsLeftOut } from "../../src/messages/results.ts";
import { type RunRecord, runPipeline } from "../../src/runPipeline.ts";
import { readColumns } from "../../src/storage/readColumns.ts";
import { writeDemoPart } from "../helpers/demoPart.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { keptFolder } from "../helpers/tempFolder.ts";

const header = "dataset,utterance,startMs,endMs,phone,decision,markedAt";
const names = [
  "utterance",
  "index",
  "phone",
  "kind",
  "startMs",
  "endMs",
  "devoiced",
  "devoicedBasis",
  "devoicedHeard",
];

interface Token {
  readonly utterance: string;
  readonly index: number;
  readonly phone: string;
  readonly kind: string;
  readonly startMs: number;
  readonly endMs: number;
  readonly devoiced: boolean | null;
  readonly devoicedBasis: string | null;
  readonly devoicedHeard: boolean | null;
}

async function tokensOf(results: string): Promise<Token[]> {
  const columns = await readColumns(join(results, "tokens.parquet"), names);
  return columns.index!.map(
    (_, i) => Object.fromEntries(names.map((name) => [name, columns[name]![i]])) as unknown as Token,
  );
}

const lineOf = ({ utterance, startMs, endMs, phone }: Token, decision: string, shiftMs = 0) =>
  `demo,${utterance},${startMs + shiftMs},${endMs + shiftMs},${phone},${decision},2026-01-01T00:00:00.000Z`;

let before: Token[];
let vowels: Token[];
let record: RunRecord;
let after: Token[];
let results: string;
let dataset: string;
const notes: string[] = [];
const onNote = (note: string) => notes.push(note);

beforeAll(async () => {
  dataset = keptFolder();
  writeDemoPart(dataset, { speakers: ["demo-01"], each: 6, labels: true });
  const card = JSON.parse(readFileSync(join(dataset, "dataset.json"), "utf8"));
  card.labelSets = card.labelSets.map((set: object) => ({ ...set, devoicingBasis: null }));
  writeFileSync(join(dataset, "dataset.json"), JSON.stringify(card));
  results = keptFolder();
  await runPipeline(runOptions([dataset], results, { onNote }));
  before = await tokensOf(results);
  vowels = before.filter(({ kind, devoicedBasis }) => kind === "vowel" && devoicedBasis === "measured");
  const marks = join(keptFolder(), "marks-demo-1.csv");
  writeFileSync(
    marks,
    [
      header,
      lineOf(vowels[0]!, vowels[0]!.devoiced ? "voiced" : "devoiced"),
      lineOf(vowels[3]!, "cannot tell", 12),
      lineOf(vowels[5]!, "voiced", 60_000),
      "demo,nobody,10,60,i,voiced,2026-01-01T00:00:00.000Z",
      "",
    ].join("\n"),
  );
  record = await runPipeline(runOptions([dataset], results, { corrections: [marks], onNote }));
  after = await tokensOf(results);
}, 120_000);

describe("run --corrections into the folder of an earlier run without", () => {
  test("turns the corrected vowels, and no others, into the person's word", () => {
    expect(vowels.length).toBeGreaterThan(20);
    const changed = after.filter((token, i) => JSON.stringify(token) !== JSON.stringify(before[i]));
    const corrected = { ...vowels[0]!, devoiced: !vowels[0]!.devoiced, devoicedBasis: "annotated" };
    expect(changed).toEqual([corrected, { ...vowels[3]!, devoiced: null, devoicedBasis: null }]);
  });

  test("keeps what was heard beside it, and never counts it as measured", async () => {
    const cells = await readColumns(join(results, "cells.parquet"), ["devoicedBasis", "marked"]);
    const marked = (basis: string) =>
      cells.marked!.reduce<number>(
        (sum, count, i) => sum + (cells.devoicedBasis![i] === basis ? Number(count) : 0),
        0,
      );
    expect(marked("annotated")).toBe(1);
    expect(marked("measured")).toBe(vowels.length - 2);
    expect(after.find(({ devoicedBasis }) => devoicedBasis === "annotated")!.devoicedHeard).toBe(
      vowels[0]!.devoicedHeard,
    );
  });

  test("lists what did not fit with file and line, and leaves no recording out because of it", () => {
    const rows = parse(readFileSync(join(results, "problems.csv"), "utf8"), { columns: true }) as Record<
      string,
      string
    >[];
    const found = rows.filter(({ rule }) => rule!.startsWith("correction-"));
    expect(found.map(({ file, line, rule }) => [file, line, rule])).toEqual([
      ["marks-demo-1.csv", "4", "correction-stale"],
      ["marks-demo-1.csv", "5", "correction-utterance-unknown"],
    ]);
    expect(record.problems.excluded).toBe(0);
  });

  test("keeps count in run.json, and says in the summary that corrections are no sample", () => {
    const { corrections } = JSON.parse(readFileSync(join(results, "run.json"), "utf8")) as RunRecord;
    expect(corrections).toMatchObject({
      files: ["marks-demo-1.csv"],
      marks: 4,
      used: 2,
      tokens: 2,
      cannotTell: 1,
    });
    const summary = runSummary(record, results);
    expect(summary).toContain("2 vowels corrected by a reader's marks");
    expect(summary).toContain(correctionsAreNoSample);
  });

  test("says so when a later run is given none, and only then", async () => {
    expect(notes).toEqual([]);
    await runPipeline(runOptions([dataset], results, { onNote }));
    expect(notes).toEqual([correctionsLeftOut(results, ["marks-demo-1.csv"])]);
    expect(await tokensOf(results)).toEqual(before);
  });
});
