import { readFile, rm } from "node:fs/promises";
import path from "node:path";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import type { RuleVerdict } from "../../src/findings/rules/verdict.ts";
import { buildSite } from "../../src/publish/buildSite.ts";
import { serve } from "../../src/publish/serve.ts";
import { smallResults } from "./fixtures/writeResults.ts";
import { type OpenSite, openSite } from "./openSite.ts";
import { watchPage } from "./watchPage.ts";

let open: OpenSite;
let verdicts: RuleVerdict[];
let page: Page;
let faults: string[];
beforeAll(async () => {
  open = await openSite(smallResults);
  verdicts = JSON.parse(await readFile(path.join(open.results, "rules.json"), "utf8"));
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
  await page.waitForSelector("form.choices");
}

const shownRules = () =>
  page.locator(".rule").evaluateAll((rules) =>
    rules
      .filter((rule) => !(rule as HTMLElement).hidden)
      .map((rule) => (rule as HTMLElement).dataset.rule!)
      .sort(),
  );
const rulesWith = (wanted: (verdict: RuleVerdict) => boolean) =>
  [...new Set(verdicts.filter(wanted).map(({ rule }) => rule))].sort();

test("every rule has a card with the verdicts, sentences and bounds of rules.json", async () => {
  await visit("rules");
  expect(await shownRules()).toEqual(rulesWith(() => true));
  const judged = verdicts.filter(({ verdict }) => verdict !== "not measurable");
  expect(judged.length).toBeGreaterThan(20);
  for (const { rule, dataset, labelSet, verdict, sentence } of judged) {
    const answer = page.locator(`[data-rule="${rule}"] .answer[data-set="${dataset}/${labelSet}"]`, {
      hasText: sentence,
    });
    expect((await answer.locator(".verdict").textContent())?.toLowerCase()).toContain(verdict);
  }
});

test("the filter keeps a verdict and a dataset, stands in the address, and back and reset undo it", async () => {
  await visit("rules");
  const all = await shownRules();
  await page.selectOption("select[name=verdict]", "undecided");
  const undecided = rulesWith(({ verdict }) => verdict === "undecided");
  expect(await shownRules()).toEqual(undecided);
  await page.selectOption("select[name=set]", "by-ear/ear");
  expect(new URL(page.url()).search).toBe("?verdict=undecided&set=by-ear/ear");
  const both = rulesWith(({ verdict, dataset }) => verdict === "undecided" && dataset === "by-ear");
  expect(both.length).toBeLessThan(undecided.length);
  expect(await shownRules()).toEqual(both);
  expect(await page.locator(".filter-status").textContent()).toBe(
    `${both.length} of ${all.length} rules are shown.`,
  );
  await page.reload({ waitUntil: "networkidle" });
  expect(await shownRules()).toEqual(both);
  await page.goBack();
  expect(await shownRules()).toEqual(undecided);
  await page.getByRole("button", { name: "Reset" }).click();
  expect(await shownRules()).toEqual(all);
});

test("by one dataset, what it bears out comes first and what it cannot measure last", async () => {
  await visit("rules?set=no-marks/plain");
  const shown = await page
    .locator(".rule .answer:not([hidden])")
    .evaluateAll((answers) => answers.map((answer) => (answer as HTMLElement).dataset.verdict!));
  const order = ["borne-out", "borne-out-in-part", "undecided", "too-little-evidence", "not-measurable"];
  expect([...new Set(shown)]).toEqual(order);
  expect(shown).toEqual([...shown].sort((a, b) => order.indexOf(a) - order.indexOf(b)));
});

test("a count in the key shows only its rules, and what cannot be measured is unfolded when asked for", async () => {
  await visit("rules");
  await page.locator('.verdict-key a[href*="not-measurable"]').click();
  expect(new URL(page.url()).search).toBe("?verdict=not-measurable");
  expect(await shownRules()).toEqual(rulesWith(({ verdict }) => verdict === "not measurable"));
  expect(await page.locator(".silent details").first().getAttribute("open")).not.toBeNull();
});

test("the start page leads to the rules with one verdict by one dataset", async () => {
  await page.goto(open.url, { waitUntil: "networkidle" });
  await page.locator('.rules-link a[href*="contradicted"]').first().click();
  await page.waitForSelector("form.choices");
  const contradicted = rulesWith(
    ({ verdict, dataset }) => verdict === "contradicted" && dataset === "by-ear",
  );
  expect(contradicted.length).toBeGreaterThan(0);
  expect(await shownRules()).toEqual(contradicted);
});

test("an address that names a folded rule unfolds it", async () => {
  await visit("rules#rule-word-grows-by-mora");
  expect(await page.locator("#rule-word-grows-by-mora").isVisible()).toBe(true);
});

test("of results without rules.json the page says how to get verdicts, and nothing fails", async () => {
  await rm(path.join(open.results, "rules.json"));
  const out = path.join(path.dirname(open.site), "old");
  await buildSite({ results: open.results, out });
  const old = await serve({ site: out });
  const oldPage = await open.browser.newPage();
  const oldFaults = watchPage(oldPage, old.url);
  await oldPage.goto(`${old.url}rules`, { waitUntil: "networkidle" });
  expect(await oldPage.locator("main").textContent()).toContain("morascope rules RESULTS");
  expect(await oldPage.locator("form.choices").count()).toBe(0);
  expect(oldFaults).toEqual([]);
  await oldPage.close();
  await old.close();
});
