import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { safeSpeakers } from "../../src/estimates/rateSafety.ts";
import { devoicingRates } from "../../src/estimates/rates.ts";
import { formatPercent } from "../../src/findings/format.ts";
import { tokenTableColumns } from "../../src/measures/columns.ts";
import { fewSpeakers } from "../../src/messages/estimates.ts";
import { buildSite } from "../../src/publish/buildSite.ts";
import { newOwnPage, pageExamples } from "../../src/publish/ownPages.ts";
import { type Served, serve } from "../../src/publish/serve.ts";
import { loadCells } from "../../src/storage/loadCells.ts";
import { launchBrowser } from "./browser.ts";
import { smallResults, writeResults } from "./fixtures/writeResults.ts";
import { writeRows } from "./fixtures/writeRows.ts";
import { watchPage } from "./watchPage.ts";

/** Two speakers whose /a/ fills three quarters of a mora and whose /i/ half of one. */
function tokens(): object[] {
  const common = {
    dataset: "by-ear",
    labelSet: "ear",
    kind: "vowel",
    length: "short",
    utterance: "a",
    index: 1,
  };
  return ["one", "two"].flatMap((speaker) =>
    [70, 75, 80].flatMap((ms) => [
      { ...common, speaker, phone: "a", startMs: 0, endMs: ms, durationMs: ms, speechRateMoraePerSec: 10 },
      {
        ...common,
        speaker,
        phone: "i",
        startMs: 0,
        endMs: ms,
        durationMs: ms - 25,
        speechRateMoraePerSec: 10,
      },
    ]),
  );
}

/** How the numbers were come by: marked by a person, or times from a dataset's labels. */
const basisWords = /marked by a person|placed by an aligner|times \S/;

let folder: string;
let results: string;
let served: Served;
let browser: Browser;
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-own-"));
  results = path.join(folder, "results");
  await writeResults(results, smallResults);
  await writeRows(path.join(results, "tokens.parquet"), tokens(), tokenTableColumns);
  for (const example of pageExamples) await newOwnPage(results, `my-${example}`, example);
  await buildSite({ results, out: path.join(folder, "site") });
  served = await serve({ site: path.join(folder, "site") });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
  await rm(folder, { recursive: true, force: true });
});

describe.each(pageExamples)("a page made from the example %s", (example) => {
  test("shows a filter and a picture, computed in the browser, and stands in the navigation", async () => {
    const page = await browser.newPage();
    const faults = watchPage(page, served.url);
    await page.goto(`${served.url}own/my-${example}`, { waitUntil: "networkidle" });
    await page.waitForSelector("figure.figure svg");
    expect(await page.locator("form.choices").count()).toBe(1);
    const basis = await page.locator("figure.figure .basis").innerText();
    const speakers = Number(/ (\d+) speakers/.exec(basis)?.[1]);
    expect(speakers).toBeLessThan(safeSpeakers);
    expect(basis).toContain(fewSpeakers(speakers, safeSpeakers));
    expect(basis).toMatch(basisWords);
    expect(await page.locator(".observablehq--error").count()).toBe(0);
    const here = page.locator('nav.wide a[aria-current="page"]');
    expect(await here.textContent()).toBe(`My ${example}`);
    expect(faults).toEqual([]);
    await page.close();
  });
});

test("a page of one's own gives the number that the library gives for the same cut", async () => {
  const cells = await loadCells(results);
  const filter = {
    dataset: "by-ear",
    vowel: ["i", "u"],
    before: "voiceless",
    after: "voiceless",
    length: "short",
  };
  const { rows } = devoicingRates(cells, { filter, by: ["speaker"] });
  const page = await browser.newPage();
  await page.goto(`${served.url}own/my-blank`, { waitUntil: "networkidle" });
  await page.locator("details.numbers").evaluate((details: HTMLDetailsElement) => {
    details.open = true;
  });
  const shown = await page.locator("details.numbers tbody tr").allInnerTexts();
  expect(rows.length).toBeGreaterThan(1);
  expect(shown.map((row) => row.split("\t").slice(0, 2))).toEqual(
    rows.map(({ by, estimate }) => [by.speaker, formatPercent(estimate!)]),
  );
  await page.close();
});

test("the contrast shows its difference as a dot, not as an interval alone", async () => {
  const page = await browser.newPage();
  await page.goto(`${served.url}own/my-contrast`, { waitUntil: "networkidle" });
  await page.waitForSelector("figure.figure svg circle");
  expect(await page.locator(".finding-line").textContent()).toMatch(/ points \(/);
  await page.close();
});

test("a measure read from the tokens is what they say", async () => {
  const page = await browser.newPage();
  await page.goto(`${served.url}own/my-measure`, { waitUntil: "networkidle" });
  await page.waitForSelector("figure.figure svg");
  expect(await page.locator(".finding-line").textContent()).toContain("/a/ takes the largest share");
  await page.locator("details.numbers").evaluate((details: HTMLDetailsElement) => {
    details.open = true;
  });
  const shown = await page.locator("details.numbers tbody tr").allInnerTexts();
  expect(shown.map((row) => row.split("\t").slice(0, 2))).toEqual([
    ["a", "0.75"],
    ["i", "0.5"],
  ]);
  await page.close();
});

test("a page that does not build is named, and the earlier report stays", async () => {
  const broken = path.join(results, "pages", "broken.md");
  await writeFile(broken, '# Broken\n\n```js\nimport { x } from "npm:morascope-notebook\n```\n');
  const before = await readFile(path.join(folder, "site", "index.html"), "utf8");
  await expect(buildSite({ results, out: path.join(folder, "site") })).rejects.toThrow(/own\/broken/);
  expect(await readFile(path.join(folder, "site", "index.html"), "utf8")).toBe(before);
  await rm(broken);
});
