import { mkdir, mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { explainTiming } from "../../../src/estimates/explain/explainTiming.ts";
import { storedExplanations } from "../../../src/estimates/explain/storedExplanations.ts";
import { tokenTableColumns } from "../../../src/measures/columns.ts";
import { writePageData } from "../../../src/publish/pageData.ts";
import { loadTokens } from "../../../src/storage/loadTokens.ts";
import { inventTokens } from "../../pages/fixtures/inventTokens.ts";
import { writeRows } from "../../pages/fixtures/writeRows.ts";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-page-data-"));
  const tokens = inventTokens({
    ...{ dataset: "d", labelSet: "l", speakers: 3, phrasesPerSpeaker: 20, seed: 1 },
    ...{ devoicedBasis: "measured", heard: true },
  });
  await mkdir(path.join(folder, "full"), { recursive: true });
  await writeRows(path.join(folder, "full", "tokens.parquet"), tokens, tokenTableColumns);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Every file that is written, read back. */
async function written(results: string, explanations: Parameters<typeof writePageData>[1]["explanations"]) {
  const data = await mkdtemp(path.join(folder, "data-"));
  await writePageData(path.join(folder, results), { explanations, level: 0.95, data });
  const names = [
    "timing",
    "vowel-space",
    "colouring",
    "what-matters",
    "length",
    "probabilities",
    "devoicing",
    "vowel-words",
  ];
  const texts = await Promise.all(names.map((name) => readFile(path.join(data, `${name}.json`), "utf8")));
  return { texts, of: (name: string) => JSON.parse(texts[names.indexOf(name)]!) };
}

test("writePageData answers what a large corpus left open where that is quick, and passes on why the rest is open", async () => {
  const none = await storedExplanations(60_000, () => Promise.reject(new Error("not to be read")), 0.95, []);
  const { of } = await written("full", none);
  const table = await loadTokens(path.join(folder, "full"));
  expect(of("timing").timings).toEqual(JSON.parse(JSON.stringify(explainTiming(table, { level: 0.95 }))));
  expect(of("vowel-space").spaces[0].groups.length).toBe(2);
  expect(of("colouring").colourings.length).toBe(4);
  expect(of("what-matters")).toEqual({ reason: none.reason, explanations: [] });
  expect(none.reason).toContain("60,000");
});

test("writePageData gives the same bytes each time", async () => {
  expect((await written("full", null)).texts).toEqual((await written("full", null)).texts);
});

test("writePageData of a folder without tokens has empty lists and the published values", async () => {
  const { of } = await written("nothing", null);
  expect(of("timing")).toMatchObject({ timings: [], samples: [] });
  expect(of("vowel-space").published.length).toBeGreaterThan(5);
  expect(of("length")).toEqual({ byRate: [] });
  expect(of("devoicing")).toEqual({ error: null });
  expect(of("vowel-words")).toBeNull();
});
