import { readFile } from "node:fs/promises";
import { parse } from "csv-parse/sync";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import type { Cells } from "../../src/estimates/cells.ts";
import { devoicingRates } from "../../src/estimates/rates.ts";
import { durationRatios } from "../../src/estimates/ratios.ts";
import { formatPercent, formatRatio } from "../../src/findings/format.ts";
import { loadCells } from "../../src/storage/loadCells.ts";
import { smallResults } from "./fixtures/writeResults.ts";
import { type OpenSite, openSite } from "./openSite.ts";
import { watchPage } from "./watchPage.ts";

let open: OpenSite;
let cells: Cells;
let page: Page;
let faults: string[];
beforeAll(async () => {
  open = await openSite(smallResults);
  cells = await loadCells(open.results);
});
afterAll(() => open?.close());
beforeEach(async () => {
  page = await open.browser.newPage({ viewport: { width: 1200, height: 900 } });
  faults = watchPage(page, open.url);
});
afterEach(async () => {
  expect(faults).toEqual([]);
  await page.close();
});

async function visit(address: string): Promise<void> {
  await page.goto(open.url + address, { waitUntil: "networkidle" });
  await page.waitForSelector(".figure");
  await settled();
}

/** What is out of sight is drawn after what is in sight: waits until all of it is. */
async function settled(): Promise<void> {
  await page.waitForFunction(() => document.querySelector("[data-waiting]") === null);
}

/** The unfolded table of a figure, row by row. */
async function numbers(figure: string): Promise<string[][]> {
  await settled();
  const details = page.locator(`#${figure} details.numbers`);
  if ((await details.getAttribute("open")) === null) await details.locator("summary").click();
  await details.locator("tbody tr").first().waitFor();
  return details
    .locator("tbody tr")
    .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent ?? "")));
}

const ear = { dataset: "by-ear", labelSet: "ear", length: "short" } as const;

describe("devoicing", () => {
  test("choosing the sounds around shows the estimator's rates and intervals to the printed digit", async () => {
    await visit("devoicing");
    await page.selectOption("select[name=before]", "s");
    await page.selectOption("select[name=after]", "k");
    const { rows } = devoicingRates(cells, {
      filter: { ...ear, vowel: "i,u", before: "s", after: "k" },
      by: ["phone"],
    });
    expect(rows.length).toBe(2);
    const expected = rows.map((row) => [
      row.by.phone === "u" ? "ɯ (u)" : "i",
      formatPercent(row.estimate!),
      formatPercent(row.low!),
      formatPercent(row.high!),
    ]);
    expect((await numbers("devoicing-rates")).map((row) => row.slice(0, 4))).toEqual(expected);
  });

  test("choices stand in the address, outlive a reload, and back and reset undo them", async () => {
    await visit("devoicing");
    const initial = await numbers("devoicing-rates");
    await page.selectOption("select[name=before]", "sh");
    expect(new URL(page.url()).search).toBe("?before=sh");
    const narrowed = await numbers("devoicing-rates");
    expect(narrowed).not.toEqual(initial);
    await page.reload({ waitUntil: "networkidle" });
    expect(await numbers("devoicing-rates")).toEqual(narrowed);
    await page.selectOption("select[name=position]", "medial");
    await page.goBack();
    expect(await numbers("devoicing-rates")).toEqual(narrowed);
    await page.locator(".choices").first().getByRole("button", { name: "Reset" }).click();
    expect(new URL(page.url()).search).toBe("");
    expect(await numbers("devoicing-rates")).toEqual(initial);
  });

  test("a value in the address that is no choice is taken for not chosen", async () => {
    await visit("devoicing?before=%3Cscript%3E&vowel=x&set=nowhere");
    expect(await page.inputValue("select[name=before]")).toBe("voiceless");
    expect(await page.locator("input[name=vowel]:checked").count()).toBe(2);
  });

  test("a cell of the grid is chosen by key and keeps the focus", async () => {
    await visit("devoicing");
    const cell = page.locator('[data-key="cell-k-s"]');
    await cell.focus();
    await page.keyboard.press("Enter");
    expect(new URL(page.url()).search).toBe("?before=k&after=s");
    expect(await page.evaluate(() => document.activeElement?.getAttribute("data-key"))).toBe("cell-k-s");
    await settled();
    expect(await cell.getAttribute("aria-pressed")).toBe("true");
  });

  test("marks written by a text rule are called predicted, with no interval and no rate", async () => {
    await visit("devoicing?set=by-rule/rule");
    const text = await page.locator("#devoicing-rates").innerText();
    expect(text).toContain("predicted by rule, not a rate");
    expect(text).not.toMatch(/interval/i);
    expect(await page.locator("#devoicing-environments .swatch:not(.by-rule)").count()).toBe(0);
    const table = await numbers("devoicing-rates");
    expect(table.every((row) => row[1] === "–" && row[2] === "–" && row[3] === "–")).toBe(true);
  });

  test("labels without devoicing marks say so instead of showing a rate", async () => {
    await visit("devoicing?set=no-marks/plain");
    expect(await page.locator("#devoicing-rates").innerText()).toContain(
      "do not say which vowels are devoiced",
    );
    expect(await page.locator(".figure svg").count()).toBe(0);
  });

  test("the saved numbers are the estimator's at full precision", async () => {
    await visit("devoicing");
    const [saved] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save numbers" }).first().click(),
    ]);
    const csv = parse(await readFile(await saved.path(), "utf8"), { columns: true, bom: true }) as Record<
      string,
      string
    >[];
    const { rows } = devoicingRates(cells, {
      filter: { ...ear, vowel: "i,u", before: "voiceless", after: "voiceless" },
      by: ["phone"],
    });
    expect(csv.map((row) => Number(row.rate))).toEqual(rows.map((row) => row.estimate));
    expect(csv.map((row) => Number(row.high))).toEqual(rows.map((row) => row.high));
  });
});

describe("length", () => {
  test.each(["vowel-length", "gemination"] as const)(
    "%s: ratios and intervals are the estimator's",
    async (contrast) => {
      await visit("length?position=medial");
      const { rows } = durationRatios(cells, {
        contrast,
        filter: { dataset: "by-ear", labelSet: "ear", position: "medial" },
        by: ["phone"],
      });
      const expected = rows
        .filter((row) => row.estimate !== null)
        .map((row) => [row.estimate!, row.low!, row.high!].map(formatRatio).join(" "));
      const shown = (await numbers(`${contrast}-ratios`)).map((row) => row.slice(1, 4).join(" "));
      expect(shown.length).toBeGreaterThan(3);
      expect(shown.sort()).toEqual(expected.sort());
    },
  );

  test("a ratio that the aligner's floor bounds is called “at least”, and one speaker is called one", async () => {
    await visit("length?set=no-marks/plain");
    const text = await page.locator("#vowel-length-ratios").innerText();
    expect(text).toContain("In this one speaker");
    expect(text).toContain("≥");
    expect(await page.locator("#vowel-length-speakers").innerText()).toContain(
      "nothing can be said about how speakers differ",
    );
  });
});

test("text of a dataset that looks like markup or code is shown, not obeyed", async () => {
  await page.goto(`${open.url}datasets`, { waitUntil: "networkidle" });
  const cell = page.getByText("has no recording");
  expect(await cell.innerText()).toContain('<img src=x onerror="alert(1)"> ${1+1} has no recording');
  expect(await page.locator("main img").count()).toBe(0);
});

test("an example can be heard, and its text is shown as text", async () => {
  await page.goto(open.url, { waitUntil: "networkidle" });
  await page.locator("#finding-high-between-voiceless ~ details.clips summary").click();
  const audio = page.locator("details.clips audio").first();
  await audio.evaluate((element) => (element as HTMLAudioElement).play());
  const durationSec = await audio.evaluate((element) => (element as HTMLAudioElement).duration);
  expect(durationSec).toBeCloseTo(0.55, 2);
  expect(await page.locator("details.clips li").first().textContent()).toContain("<b>きた</b>");
});

test("compared by dataset, each set's rate and ratio stand for themselves, as the estimators give them alone", async () => {
  const sets = smallResults.cards.map(({ id, labelSets }) => ({ dataset: id, labelSet: labelSets[0]!.id }));
  await visit("devoicing?by=set");
  const rates = sets.map((set) => {
    const filter = { ...set, vowel: "i,u", before: "voiceless", after: "voiceless", length: "short" };
    const [row] = devoicingRates(cells, { filter }).rows;
    return row?.estimate == null ? "–" : formatPercent(row.estimate);
  });
  expect((await numbers("devoicing-rates")).map((row) => row[1])).toEqual(rates.filter((_, i) => i < 2));
  await visit("length?by=set");
  const ratios = sets.map((filter) =>
    formatRatio(durationRatios(cells, { contrast: "vowel-length", filter }).rows[0]!.estimate!),
  );
  const shown = await numbers("vowel-length-ratios");
  expect(shown.map((row) => row.slice(0, 2))).toEqual(
    smallResults.cards.map(({ name }, i) => [name, ratios[i]]),
  );
  await page.locator("#vowel-length-ratios .cite-figure summary").click();
  const citation = page.locator("#vowel-length-ratios .citation pre").first();
  await citation.waitFor();
  const text = await citation.textContent();
  for (const { name } of smallResults.cards) expect(text).toContain(`${name}, version 1`);
});
