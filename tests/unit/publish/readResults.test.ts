import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { resultsMissing } from "../../../src/messages/publish.ts";
import { readProblems, readRun } from "../../../src/publish/readResults.ts";
import { schemaVersion } from "../../../src/storage/schemaVersion.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-results-"));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const run = {
  schemaVersion,
  software: { name: "morascope", version: "0" },
  createdAt: "2026-01-02T03:04:05.000Z",
  datasets: [inventCard({ id: "d", name: "D" }, { id: "s" })],
  counts: { utterances: 1, phones: 1, intervals: 1, tokens: 1, cells: 1 },
  parameters: { level: 0.95 },
  problems: { total: 0, excluded: 0 },
};
const write = (file: string, text: string) => writeFile(path.join(folder, file), text);

describe("readRun", () => {
  test("reads what a run wrote and lets further fields be", async () => {
    await write("run.json", JSON.stringify({ ...run, more: 1, counts: { ...run.counts, words: 2 } }));
    expect((await readRun(folder)).datasets[0]!.name).toBe("D");
  });

  test("says which file is missing and what to give instead", async () => {
    await expect(readRun(folder)).rejects.toThrow(resultsMissing(folder, "run.json"));
  });

  test("names the field at fault", async () => {
    await write("run.json", JSON.stringify({ ...run, datasets: [{ ...run.datasets[0], speakers: "many" }] }));
    await expect(readRun(folder)).rejects.toThrow("datasets.0.speakers");
    await write("run.json", "{");
    await expect(readRun(folder)).rejects.toThrow("cannot be used");
  });
});

describe("readProblems", () => {
  test("reads quotes, commas and empty fields", async () => {
    await write(
      "problems.csv",
      'dataset,utterance,file,line,rule,message,wayOut,excluded\nd,,a.txt,,r,"a ""b"", c",x,false\n',
    );
    expect(await readProblems(folder)).toEqual([
      {
        dataset: "d",
        utterance: null,
        file: "a.txt",
        line: null,
        rule: "r",
        message: 'a "b", c',
        wayOut: "x",
        excluded: false,
      },
    ]);
  });
});
