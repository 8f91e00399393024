import { mkdtemp, readFile, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import type { StoredExplanations } from "../../src/estimates/explain/storedExplanations.ts";
import { compareRates } from "../../src/estimates/rateContrasts.ts";
import { devoicingRates } from "../../src/estimates/rates.ts";
import { labelAt } from "../../src/estimates/tokenTable.ts";
import { formatPercent, formatRatio } from "../../src/findings/format.ts";
import { isVoiceless } from "../../src/phonology/phones.ts";
import { buildSite } from "../../src/publish/buildSite.ts";
import { type Served, serve } from "../../src/publish/serve.ts";
import { loadCells } from "../../src/storage/loadCells.ts";
import { loadTokens } from "../../src/storage/loadTokens.ts";
import { launchBrowser } from "./browser.ts";
import { knownError, writeTokenResults } from "./fixtures/writeTokens.ts";
import { watchPage } from "./watchPage.ts";

const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let folder: string;
let results: string;
let served: Served;
let browser: Browser;
let answers: StoredExplanations;
let page: Page;
let faults: string[];
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-explanations-"));
  results = path.join(folder, "results");
  await writeTokenResults(results);
  await buildSite({ results, out: path.join(folder, "site") });
  answers = JSON.parse(await readFile(path.join(results, "explanations.json"), "utf8"));
  served = await serve({ site: path.join(folder, "site") });
  browser = await launchBrowser();
}, 240_000);
afterAll(async () => {
  await browser?.close();
  await served?.close();
  await rm(folder, { recursive: true, force: true });
});
beforeEach(async () => {
  page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
  faults = watchPage(page, served.url);
});
afterEach(async () => {
  expect(faults).toEqual([]);
  await page.close();
});

async function visit(address: string, on = page): Promise<void> {
  await on.goto(served.url + address, { waitUntil: "networkidle" });
  await on.waitForSelector(".figure");
  await on.waitForFunction(() => document.querySelector("[data-waiting]") === null);
}

/** The unfolded table of a figure, row by row. */
async function numbers(figure: string): Promise<string[][]> {
  await page.waitForFunction(() => document.querySelector("[data-waiting]") === null);
  const details = page.locator(`#${figure} details.numbers`);
  if ((await details.getAttribute("open")) === null) await details.locator("summary").click();
  await details.locator("tbody tr").first().waitFor();
  return details
    .locator("tbody tr")
    .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent ?? "")));
}

const finding = (figure: string) => page.locator(`#${figure} .finding-line`).textContent();
const of = <T extends { readonly dataset: string }>(list: readonly T[], dataset = "heard") =>
  list.find((one) => one.dataset === dataset)!;

/** The other two are looked at by `everyPage.test.ts`. */
const looks = [
  { colorScheme: "dark", width: 360 },
  { colorScheme: "light", width: 1600 },
] as const;
const addresses = ["timing", "vowel-space", "colouring", "what-matters", "devoicing", "length"];

describe.each(addresses)("page %s with answers", (address) => {
  test.each(looks)("at $width px, $colorScheme: no fault, no grave axe finding, no NaN", async (look) => {
    const { colorScheme, width } = look;
    const context = await browser.newContext({ colorScheme, viewport: { width, height: 900 } });
    const own = await context.newPage();
    const seen = watchPage(own, served.url);
    await visit(address, own);
    expect(await own.locator(".figure svg").count()).toBeGreaterThan(1);
    await own.locator("main details").evaluateAll((all) => {
      for (const details of all as HTMLDetailsElement[]) details.open = true;
    });
    await own.evaluate(axe);
    const found = (await own.evaluate("axe.run().then((result) => result.violations)")) as {
      readonly id: string;
      readonly impact: string;
      readonly nodes: readonly { readonly html: string }[];
    }[];
    const grave = found.filter(({ impact }) => impact === "serious" || impact === "critical");
    expect(grave.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    expect(await own.locator("main").innerHTML()).not.toMatch(/NaN|undefined|Infinity|\[object/);
    const bare = own.locator("figure.figure:has(svg):not(:has(.basis .counts))");
    expect(await bare.evaluateAll((all) => all.map(({ id }) => id)), "figures without a basis").toEqual([]);
    const overflow = await own.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow, "the page scrolls sideways").toBeLessThanOrEqual(0);
    expect(seen).toEqual([]);
    await context.close();
  });

  test.each(["set=rule/text", "set=alone/ear"])(
    "of labels alone or one speaker (%s) has no NaN",
    async (set) => {
      await visit(`${address}?${set}`);
      expect(await page.locator("main").innerHTML()).not.toMatch(/NaN|undefined|Infinity|\[object/);
      expect(await page.locator(".finding-line").first().textContent()).not.toBe("");
    },
  );
});

describe("timing", () => {
  test("shows the run's slope, its interval and R², and by stretches when asked", async () => {
    await visit("timing");
    const { words, phrases } = of(answers.timing);
    const { msPerMora, rSquared } = words.found!;
    const text = await finding("timing-growth");
    expect(text).toContain(`${Math.round(msPerMora.estimate)}\u00a0ms`);
    expect(text).toContain(`${msPerMora.low!.toFixed(0)} to ${msPerMora.high!.toFixed(0)}\u00a0ms`);
    expect(text).toContain(`${Math.round(100 * rSquared.estimate)}\u00a0%`);
    await page.selectOption("select[name=unit]", "phrase");
    expect(new URL(page.url()).search).toBe("?unit=phrase");
    expect(await finding("timing-growth")).toContain(
      `${Math.round(phrases.found!.msPerMora.estimate)}\u00a0ms`,
    );
  });

  test("the twins' first row is the run's ratio with its interval and counts", async () => {
    await visit("timing");
    const { estimate, low, high, devoicedTokens, voicedTokens } = of(answers.timing).devoicedMora.found!;
    const [overall, ...morae] = await numbers("timing-twins");
    expect(overall!.slice(1, 4)).toEqual([estimate, low, high].map((value) => value.toFixed(3)));
    expect(overall!.slice(6, 8)).toEqual([devoicedTokens, voicedTokens].map(String));
    expect(morae.length).toBe(of(answers.timing).devoicedMora.found!.morae.length);
  });

  test("rhythm is each speaker's as the run found it", async () => {
    await visit("timing");
    const expected = of(answers.timing).rhythm.found!.perSpeaker.map((own) => [
      own.speaker,
      ...[own.vowelPercent, own.deltaConsonantMs, own.vowelNpvi].map((value) => value!.toFixed(1)),
    ]);
    expect((await numbers("timing-rhythm")).map((row) => row.slice(0, 4))).toEqual(expected);
  });
});

test("vowel space in Hz and normalised is the run's, and the scale stands in the address", async () => {
  await visit("vowel-space");
  const groups = of(answers.vowelSpace).groups;
  const all = groups.flatMap(({ vowels }) => vowels);
  expect((await numbers("vowel-chart")).map((row) => [row[3], row[7]])).toEqual(
    all.map((vowel) => [vowel.f1Hz.estimate.toFixed(0), vowel.f2Hz.estimate.toFixed(0)]),
  );
  await page.selectOption("select[name=scale]", "z");
  expect(new URL(page.url()).search).toBe("?scale=z");
  expect((await numbers("vowel-chart")).map((row) => row[7])).toEqual(
    all.filter(({ f2Z }) => f2Z !== null).map((vowel) => vowel.f2Z!.estimate.toFixed(2)),
  );
  expect(await page.locator("#vowel-chart").textContent()).toContain("Published values are in Hz");
});

test("vowel space of labels alone says that it needs recordings and draws nothing", async () => {
  await visit("vowel-space?set=rule/text");
  expect(await finding("vowel-chart")).toContain("No vowel has measured formants");
  expect(await page.locator("#vowel-chart svg, #vowel-length-quality svg").count()).toBe(0);
});

test("colouring shows the run's difference and interval, and why there is none for an unmeasured consonant", async () => {
  await visit("colouring");
  const told = answers.colouring.filter(
    ({ dataset, consonant }) => dataset === "heard" && consonant === "sh",
  );
  expect((await numbers("colouring-difference")).map((row) => row.slice(1, 4))).toEqual(
    told.map(({ difference }) =>
      [difference!.estimate, difference!.low!, difference!.high!].map((hz) => hz.toFixed(0)),
    ),
  );
  await page.selectOption("select[name=consonant]", "k");
  expect(await finding("colouring-difference")).toContain("No /k/ here has a measured spectrum");
});

describe("what matters together", () => {
  test("lists every effect of both models as the run found it", async () => {
    await visit("what-matters");
    const { models } = of(answers.devoicing);
    const expected = models.flatMap(({ effects }) =>
      effects.map(({ ratio, percentagePoints }) => [
        ratio?.estimate.toFixed(2) ?? "–",
        percentagePoints?.estimate.toFixed(1) ?? "–",
      ]),
    );
    expect(expected.length).toBeGreaterThan(10);
    expect((await numbers("model-effects")).map((row) => [row[3], row[6]])).toEqual(expected);
    const shares = models.find(({ kind }) => kind === "mixed")!.variance;
    expect((await numbers("model-variance")).length).toBe(shares.length);
  });

  test("marks written by a rule are refused in a sentence, without a picture", async () => {
    await visit("what-matters?set=rule/text");
    expect(await finding("model-effects")).toContain("written from the text by a rule");
    expect(await page.locator(".figure svg").count()).toBe(0);
  });
});

describe("devoicing", () => {
  test("rates measured from sound stand corrected beside the raw ones, by the marks' error", async () => {
    await visit("devoicing");
    const cells = await loadCells(results);
    const { rows } = devoicingRates(cells, {
      filter: { dataset: "heard", vowel: "i,u", before: "voiceless", after: "voiceless", length: "short" },
      by: ["phone"],
      accuracy: knownError,
    });
    const shown = (await numbers("devoicing-rates")).map((row) => row.slice(4, 7));
    expect(shown).toEqual(
      rows.map(({ corrected }) => [corrected!.estimate, corrected!.low, corrected!.high].map(formatPercent)),
    );
    expect(await page.locator("#devoicing-rates").textContent()).toContain("Hollow: corrected");
  });

  test("two cuts differ by what the estimator says, and the second one lives in the address", async () => {
    await visit("devoicing");
    await page.selectOption('select[name="second-after"]', "s");
    expect(new URL(page.url()).search).toBe("?second-after=s");
    const cells = await loadCells(results);
    const cut = { dataset: "heard", vowel: "i,u", before: "voiceless", length: "short" };
    const [row] = compareRates(cells, { ...cut, after: "voiceless" }, { ...cut, after: "s" }).rows;
    const table = await numbers("devoicing-two-cuts");
    expect(table.map((cells) => cells[1])).toEqual(
      [row!.rate, row!.otherRate, row!.difference].map(formatPercent),
    );
    expect(table[2]!.slice(2, 4)).toEqual([row!.low, row!.high].map(formatPercent));
    await page.reload({ waitUntil: "networkidle" });
    expect((await numbers("devoicing-two-cuts")).length).toBe(3);
    await page.selectOption('select[name="second-after"]', "voiceless");
    expect(await finding("devoicing-two-cuts")).toContain("Both cuts are the same");
  });

  test("the sweep counts the vowels at or above each cut-off", async () => {
    await visit("devoicing");
    const { labels, numbers: columns } = await loadTokens(results);
    const probabilities = Array.from(columns.devoicedProbability).filter((_, row) => {
      const [phone, before, after] = [labels.phone, labels.before, labels.after].map(
        (one) => labelAt(one, row)!,
      );
      return (
        labelAt(labels.dataset, row) === "heard" &&
        (phone === "i" || phone === "u") &&
        labelAt(labels.length, row) === "short" &&
        isVoiceless(before!) &&
        isVoiceless(after!)
      );
    });
    expect(probabilities.length).toBeGreaterThan(100);
    const table = await numbers("devoicing-cut-off");
    for (const cutOff of [0.2, 0.5, 0.8]) {
      const row = table.find(([at]) => Number(at) === cutOff)!;
      const devoiced = probabilities.filter((one) => one >= cutOff).length;
      expect(row.slice(4)).toEqual([String(devoiced), String(probabilities.length)]);
      expect(row[1]).toBe(formatPercent(devoiced / probabilities.length));
    }
  });

  test("values of the address that are not known are named, and leave with the next choice", async () => {
    await visit("devoicing?before=zz&vowel=i,x&second-after=nowhere");
    const [first, second] = await page.locator(".unknown-values").allInnerTexts();
    expect(first).toContain("Sound before: “zz” is not known here; any voiceless but ッ is shown.");
    expect(first).toContain("Vowels: “x” is not known here; i is shown.");
    expect(second).toContain("“nowhere” is not known here; pause is shown.");
    await page.selectOption("select[name=position]", "medial");
    expect(await page.locator(".unknown-values:visible").count()).toBe(0);
  });
});

test("length per mora and by speech rate holds the ratios of the tokens, one place for each", async () => {
  await visit("length");
  const [overall] = await numbers("vowel-length-per-mora");
  expect(overall!.slice(1, 7).every((value) => /^\d\.\d\d$/.test(value))).toBe(true);
  expect(await finding("vowel-length-per-mora")).toContain(`lasts ${overall![4]} times`);
  const bands = await numbers("vowel-length-pace");
  expect(bands.map(([band]) => band)).toEqual(["slow", "middle", "fast"]);
  const invented = 150 / 65;
  for (const row of bands) expect(Number(row[1])).toBeGreaterThan(0.85 * invented);
  expect(formatRatio(Number(overall![1]))).toBe(overall![1]);
});
