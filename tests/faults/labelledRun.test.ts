import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { outputIsNotOurs } from "../../src/messages/publish.ts";
import * as messages from "../../src/messages/results.ts";
import { runPipeline, withTables } from "../../src/runPipeline.ts";
import { readColumns } from "../../src/storage/readColumns.ts";
import { measuredRows } from "../helpers/measuredRows.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { tempFolder } from "../helpers/tempFolder.ts";

const good = "0.00 0.10 sil\n0.10 0.20 k\n0.20 0.30 a\n0.30 0.40 sil\n";

interface ProblemRow {
  readonly utterance: string;
  readonly file: string;
  readonly line: string;
  readonly rule: string;
  readonly message: string;
  readonly wayOut: string;
  readonly excluded: string;
}

/** Up to the tables; what is concluded from them is the same whatever was left out. */
async function run(files: Readonly<Record<string, string | Uint8Array>>) {
  const out = tempFolder();
  const record = await withTables(runOptions([tempFolder(files)], out), async (measured) => measured);
  const problems = parse(readFileSync(join(out, "problems.csv"), "utf8"), { columns: true }) as ProblemRow[];
  const tokens = await readColumns(join(out, "tokens.parquet"));
  const utterances = await readColumns(join(out, "utterances.parquet"));
  return { out, record, problems, tokens, utterances };
}

describe("a run over labels of which one is bad", () => {
  test.each([
    ["overlapping times", "0.0 0.2 k\n0.1 0.3 a\n", "label-times-overlap", "2"],
    ["reversed times", "0.2 0.1 k\n", "label-times-reversed", "1"],
    ["missing times", "0.0 k\n", "label-columns", "1"],
    ["times that are no numbers", "0.0 x k\n", "label-time-not-a-number", "1"],
    ["an unknown phone", "0.0 0.1 k\n0.1 0.2 xyz\n", "label-phone-unknown", "2"],
  ])(
    "%s: the others are measured, this one is listed with file, line and way out",
    async (_, bad, rule, line) => {
      const { record, problems, tokens } = await run({ "bad.lab": bad, "good.lab": good });
      expect(new Set(tokens.utterance)).toEqual(new Set(["good"]));
      expect(record.problems.excluded).toBe(1);
      const problem = problems.find((row) => row.rule === rule);
      expect(problem).toMatchObject({ utterance: "bad", file: "bad.lab", line, excluded: "true" });
      expect(problem!.message).not.toBe("");
      expect(problem!.wayOut).not.toBe("");
    },
  );

  test("an empty file is listed too", async () => {
    const { problems, tokens } = await run({ "bad.lab": "", "good.lab": good });
    expect(tokens.utterance).toEqual(["good", "good"]);
    expect(problems.some(({ file, excluded }) => file === "bad.lab" && excluded === "true")).toBe(true);
  });
});

test("a run over labels whose kept parts were damaged or lost makes them anew: every row once, every problem once", async () => {
  const names = Array.from({ length: 60 }, (_, i) => `u${i}.lab`);
  const labels = Object.fromEntries(names.map((name, i) => [name, i % 9 === 0 ? "0.0 x k\n" : good]));
  const [dataset, out] = [tempFolder(labels), tempFolder()];
  const first = await measuredRows(dataset, out, { shardSize: 1 });
  const cache = join(out, ".cache");
  const parts = readdirSync(cache, { recursive: true, encoding: "utf8" }).filter((file) =>
    /[0-9a-f]{64}$/.test(file),
  );
  expect(parts.length).toBeGreaterThan(4);
  for (const [i, file] of parts.entries()) {
    const bytes = readFileSync(join(cache, file));
    bytes[bytes.length >> 1]! ^= 1;
    if (i % 3 === 0) writeFileSync(join(cache, file), bytes);
    if (i % 3 === 1) rmSync(join(cache, file));
  }
  const again = await measuredRows(dataset, out, { shardSize: 1 });
  expect(first.utterances.length).toBe(60);
  expect(again).toEqual(first);
});

describe("a run over a transcript", () => {
  const transcript = (lines: string) => ({
    "transcript.txt": lines,
    "labels/A_001.lab": good,
    "labels/A_002.lab": good,
  });

  test("HTML in a transcript stays text in the tables", async () => {
    const { utterances } = await run(transcript("A_001:<b>蚊</b><script>x</script>,カ\nA_002:蚊,カ\n"));
    expect(utterances.text).toContain("<b>蚊</b><script>x</script>");
  });

  test("a line without a label and a label without a line are listed", async () => {
    const { problems } = await run({
      "transcript.txt": "A_001:蚊,カ\nA_003:蚊,カ\n",
      "labels/A_001.lab": good,
      "labels/A_002.lab": good,
    });
    const named = problems.map(({ utterance, message }) => `${utterance} ${message}`).join("\n");
    expect(named).toContain("A_003");
    expect(named).toContain("A_002");
  });

  test("a reading that does not fit its label is reported and not used for length", async () => {
    const { problems, tokens } = await run({
      "transcript.txt": "A_001:ビール,ビール\n",
      "labels/A_001.lab": "0.0 0.1 b\n0.1 0.2 i\n0.2 0.3 i\n0.3 0.4 r\n0.4 0.5 o\n",
    });
    expect(problems.find(({ rule }) => rule === "label-reading-differs")).toMatchObject({
      line: "5",
      excluded: "false",
    });
    const vowels = tokens.phone!.flatMap((phone, i) => (phone === "i" ? [tokens.length![i] ?? null] : []));
    expect(vowels).toEqual([null, null]);
  });
});

describe("a run with nothing to measure", () => {
  test("says so, and what was found most often, instead of writing empty tables", async () => {
    const folder = tempFolder({ "bad.lab": "0.0 0.1 xyz\n", "worse.lab": "0.0 0.1 xyz\n", "empty.lab": "" });
    const run = runPipeline(runOptions([folder], tempFolder()));
    await expect(run).rejects.toThrow(/nothing to measure.*\n {2}.*xyz.* \(2 like it\)\n {2}/);
  });
});

test("two datasets of one name are refused, both folders named", async () => {
  const [first, second] = [tempFolder({ "good.lab": good }), tempFolder({ "good.lab": good })];
  const card = JSON.stringify({ id: "same", name: "Same", layout: "labels-only" });
  const { writeFileSync } = await import("node:fs");
  for (const folder of [first, second]) writeFileSync(join(folder, "dataset.json"), card);
  await expect(runPipeline(runOptions([first, second], tempFolder()))).rejects.toThrow(
    messages.datasetTwice("same", first, second),
  );
});

test("the same input gives the same bytes in every file", async () => {
  const folder = tempFolder({ "transcript.txt": "A_001:蚊,カ\n", "labels/A_001.lab": good });
  const outs = [tempFolder(), tempFolder()];
  for (const out of outs) await runPipeline(runOptions([folder], out));
  for (const file of [
    "run.json",
    "tokens.parquet",
    "cells.parquet",
    "intervals.parquet",
    "utterances.parquet",
    "estimates.json",
    "explanations.json",
    "rules.json",
    "findings.json",
    "problems.csv",
    "datapackage.json",
  ])
    expect(readFileSync(join(outs[0]!, file)).equals(readFileSync(join(outs[1]!, file))), file).toBe(true);
});

test("results inside the dataset folder are refused before anything is written", async () => {
  const folder = tempFolder({ "good.lab": good });
  for (const out of [folder, join(folder, "results")])
    await expect(runPipeline(runOptions([folder], out))).rejects.toThrow(
      messages.outInsideDataset(out, folder),
    );
  expect(readdirSync(folder)).toEqual(["good.lab"]);
});

test("a report folder with somebody's files is refused before the work, not after it", async () => {
  const folder = tempFolder({ "good.lab": good });
  const out = tempFolder({ ".morascope-results": "", "site/mine.html": "mine" });
  const options = { ...runOptions([folder], out), report: true };
  await expect(runPipeline(options)).rejects.toThrow(outputIsNotOurs(join(out, "site"), ["mine.html"]));
  expect(readdirSync(out).sort()).toEqual([".morascope-results", "site"]);
});
