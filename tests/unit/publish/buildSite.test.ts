import { mkdir, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { outputHoldsResults, outputIsNotOurs, resultsMissing } from "../../../src/messages/publish.ts";
import { buildSite } from "../../../src/publish/buildSite.ts";
import { smallResults, writeResults } from "../../pages/fixtures/writeResults.ts";

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-build-"));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

describe("buildSite refuses, and leaves everything as it was", () => {
  test("a folder that is no results folder", async () => {
    const out = path.join(folder, "site");
    await expect(buildSite({ results: folder, out })).rejects.toThrow(resultsMissing(folder, "run.json"));
    expect(await readdir(folder)).toEqual([]);
  });

  test("an output folder that holds somebody's files", async () => {
    const results = path.join(folder, "results");
    await writeResults(results, smallResults);
    const out = path.join(folder, "thesis");
    await mkdir(out);
    await writeFile(path.join(out, "chapter.txt"), "mine");
    await expect(buildSite({ results, out })).rejects.toThrow(outputIsNotOurs(out, ["chapter.txt"]));
    expect(await readdir(out)).toEqual(["chapter.txt"]);
  });

  test("an output folder that the results lie in", async () => {
    const results = path.join(folder, "results");
    await expect(buildSite({ results, out: folder })).rejects.toThrow(outputHoldsResults(folder, results));
  });
});
