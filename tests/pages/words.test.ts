import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { parse } from "csv-parse/sync";
import type { Download, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { shownFirst } from "../../reports/components/words/wordsPage.ts";
import { chooseSet } from "../../src/findings/words/chooseSet.ts";
import type { DrillWords } from "../../src/findings/words/drillWords.ts";
import { type OpenCandidate, openListing } from "../../src/findings/words/openListing.ts";
import { packDevoicing } from "../../src/findings/words/packWords.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { smallResults } from "./fixtures/writeResults.ts";
import { type OpenSite, openSite } from "./openSite.ts";
import { watchPage } from "./watchPage.ts";

const text = interfaceText().words;
const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
let open: OpenSite;
let candidates: OpenCandidate[];
let page: Page;
let faults: string[];
beforeAll(async () => {
  open = await openSite(smallResults);
  const words: DrillWords = JSON.parse(await readFile(path.join(open.results, "drill-words.json"), "utf8"));
  candidates = openListing(words.listing, packDevoicing(words.devoicing), words.lengths);
});
afterAll(() => open?.close());
beforeEach(async () => {
  page = await open.browser.newPage({ viewport: { width: 1400, height: 1000 } });
  faults = watchPage(page, open.url);
});
afterEach(async () => {
  expect(faults).toEqual([]);
  await page.close();
});

async function visit(query = ""): Promise<void> {
  await page.goto(`${open.url}words${query}`, { waitUntil: "networkidle" });
  await page.waitForSelector(".word-item");
}

const of = (target: string) => candidates.filter((one) => one.target === target);
const idsIn = (url: string) => (new URL(url).searchParams.get("picks") ?? "").split(".").filter(Boolean);
const listed = () =>
  page.locator(".word-item").evaluateAll((items) => items.map((item) => (item as HTMLElement).dataset.id!));

async function save(format: string): Promise<string> {
  const [saved] = (await Promise.all([
    page.waitForEvent("download"),
    page.locator(`[data-key="save-${format}"]`).click(),
  ])) as [Download, unknown];
  return readFile(await saved.path(), "utf8");
}

describe("drill words", () => {
  test("six pairs are picked, stay in the address and are saved as a table whose cells no spreadsheet runs", async () => {
    await visit("?target=vowel-length");
    const wanted = of("vowel-length").slice(0, 6);
    for (const { id } of wanted) await page.locator(`[data-pick="${id}"]`).check();
    expect(idsIn(page.url())).toEqual(wanted.map(({ id }) => id));
    await page.reload({ waitUntil: "networkidle" });
    expect(await page.locator(".picked li").count()).toBe(6);
    const rows = parse(await save("CSV"), { columns: true, bom: true }) as Record<string, string>[];
    expect(rows.map(({ kana }) => kana)).toEqual(
      wanted.map(({ words }) => words.map(({ kana }) => kana).join(" / ")),
    );
    expect(rows[0]!.evidence).toContain("times as long");
    const json = JSON.parse(await save("JSON"));
    expect(json.sets[0].items).toHaveLength(6);
    expect(json.notices.join()).toContain("no evidence about Japanese");
    expect((await save("TSV")).split("\n")[1]).toContain("\t");
    await page.goBack();
    expect(await page.locator(".picked li").count()).toBe(5);
  });

  test("the best of a target come first; the rest is a click away, and a saved list holds them all", async () => {
    const target = "final";
    const all = of(target);
    expect(all.length).toBeGreaterThan(shownFirst);
    await visit(`?target=${target}`);
    const count = () => page.locator(".word-item").first().getAttribute("aria-setsize").then(Number);
    expect(await count()).toBe(shownFirst);
    expect(await listed()).toEqual(all.slice(0, shownFirst).map(({ id }) => id));
    expect(parse(await save("list-CSV"), { columns: true, bom: true })).toHaveLength(all.length);
    await page.getByRole("button", { name: text.showAll(all.length) }).click();
    expect(await count()).toBe(all.length);
    const focused = () => page.evaluate(() => (document.activeElement as HTMLElement).dataset.pick);
    expect(await focused()).toBe(all[shownFirst]!.id);
    await page.getByRole("button", { name: text.bestOnly(shownFirst) }).click();
    expect(await count()).toBe(shownFirst);
    await page.fill("input[name=find]", all.at(-1)!.words[0]!.kana);
    await page.waitForFunction(() => location.search.includes("find"));
    expect(await listed()).toContain(all.at(-1)!.id);
  });

  test("text that looks like a formula or like markup is shown and saved as text", async () => {
    const formula = candidates.find(({ words }) => words[1]?.surface === "=sat")!;
    await visit(`?target=${formula.target}&picks=${formula.id}`);
    const table = await save("CSV");
    expect(table).not.toMatch(/(^|,|")=sat/);
    expect(await page.locator("main b").count()).toBe(0);
  });

  test("a set covers the environments, and is the one that the terminal's code chooses", async () => {
    await visit("?target=devoiced-i");
    await page.fill("input[name=size]", "4");
    await page.fill("input[name=seed]", "3");
    await page.getByRole("button", { name: text.choose }).click();
    const options = { size: 4, seed: 3, minSpeakers: 0, heardOnly: false, listOnly: false, heldOutShare: 0 };
    const { chosen, uncovered } = chooseSet(of("devoiced-i"), options);
    expect(chosen).toHaveLength(4);
    expect(idsIn(page.url())).toEqual(chosen.map(({ id }) => id));
    expect(await page.locator(".set-status").textContent()).toContain(text.uncovered(uncovered.length));
  });

  test("the filter narrows by text, sound and voices, and keeps the order that is asked for", async () => {
    await visit("?target=devoiced-i");
    await page.fill("input[name=find]", "きた");
    await page.waitForFunction(() => location.search.includes("find"));
    expect(await listed()).toEqual(
      of("devoiced-i")
        .filter(({ words }) => words[0]!.kana.includes("キタ"))
        .map(({ id }) => id),
    );
    await page.getByRole("button", { name: text.reset }).click();
    await page.selectOption("select[name=before]", "sh");
    expect(await listed()).toEqual(
      of("devoiced-i")
        .filter(({ c1 }) => c1 === "sh")
        .map(({ id }) => id),
    );
    await visit("?target=devoiced-i&heard=1");
    expect(await listed()).toEqual(
      of("devoiced-i")
        .filter(({ heardSpeakers }) => heardSpeakers > 0)
        .map(({ id }) => id),
    );
    await visit("?target=vowel-length&order=kana");
    const kana = await page.locator(".word-item .word:first-child .kana").allTextContents();
    expect(kana).toEqual([...kana].sort());
  });

  test("chances stand as a picture with their interval in words", async () => {
    const one = of("devoiced-u")[0]!;
    await visit("?target=devoiced-u");
    const { estimate } = one.chances[0]!;
    const label = await page.locator(`[data-id="${one.id}"] svg`).getAttribute("aria-label");
    expect(label).toContain(`/u/ whispered in about ${Math.round(100 * estimate!)}\u00a0%`);
  });

  test("a word is heard from its recording, by key", async () => {
    await visit("?target=devoiced-i&heard=1");
    const button = page.locator(".hear").first();
    const [answer] = await Promise.all([page.waitForResponse(/recordings/), button.press("Enter")]);
    expect(answer.ok()).toBe(true);
    expect(await button.getAttribute("aria-label")).toContain("speaker 01");
    expect(await button.isDisabled()).toBe(false);
  });

  test("picks that these results do not list are told", async () => {
    await visit("?picks=zzzzzz");
    expect(await page.locator(".picks-status").textContent()).toContain(text.lost(1));
  });

  test("only the sheet of the picks is printed, on the paper that is chosen", async () => {
    await visit(`?target=triplet&picks=${of("triplet")[0]!.id}.${of("gemination")[0]!.id}`);
    await page.evaluate(() => Object.assign(window, { print: () => {} }));
    const sizes: string[] = [];
    for (const paper of ["A4", "Letter"]) {
      await page.selectOption("select[name=paper]", paper);
      await page.getByRole("button", { name: text.print }).click();
      const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
      sizes.push(/MediaBox\s*\[([^\]]+)\]/.exec(pdf)![1]!.trim());
    }
    expect(sizes.map((size) => size.split(/\s+/).map((side) => Math.round(Number(side))))).toEqual([
      [0, 0, 595, 842],
      [0, 0, 612, 792],
    ]);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".handout").isVisible()).toBe(true);
    for (const gone of [".word-list", ".word-filter", ".set-panel", "#observablehq-header"])
      expect(await page.locator(gone).isVisible(), gone).toBe(false);
    expect(await page.locator(".handout").innerText()).toContain("IPADIC");
  });

  test("with picks it has no serious fault for a screen reader", async () => {
    await visit(
      `?target=devoiced-pair&picks=${candidates
        .slice(0, 3)
        .map(({ id }) => id)
        .join(".")}`,
    );
    await page.evaluate(axe);
    const found = (await page.evaluate("axe.run().then((result) => result.violations)")) as {
      id: string;
      impact: string;
    }[];
    expect(found.filter(({ impact }) => /serious|critical/.test(impact)).map(({ id }) => id)).toEqual([]);
  });
});
