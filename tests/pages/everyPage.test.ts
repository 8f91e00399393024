import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { sitePages } from "../../src/publish/siteConfig.ts";
import { smallResults } from "./fixtures/writeResults.ts";
import { type OpenSite, openSite } from "./openSite.ts";
import { watchPage } from "./watchPage.ts";

const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let open: OpenSite;
beforeAll(async () => {
  open = await openSite(smallResults);
});
afterAll(() => open?.close());

interface AxeFinding {
  readonly id: string;
  readonly impact: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[];
}

const looks = (["light", "dark"] as const).flatMap((colorScheme) =>
  [360, 1600].map((width) => ({ colorScheme, width })),
);

interface Look {
  readonly colorScheme: "light" | "dark";
  readonly width: number;
}

/** Opens a page, unfolds all of it, and expects nothing wrong with it. */
async function lookAt(file: string, { colorScheme, width }: Look, notSaid: string): Promise<Page> {
  const context = await open.browser.newContext({ colorScheme, viewport: { width, height: 900 } });
  const page = await context.newPage();
  const faults = watchPage(page, open.url);
  await page.goto(`${open.url}${file.replace(/(^|\/)index$/, "$1")}`, { waitUntil: "networkidle" });
  if (/(^|\/)(devoicing|length)$/.test(file)) await page.waitForSelector(".figure svg");

  const unfold = (all: Element[]) => {
    for (const details of all as HTMLDetailsElement[]) details.open = true;
  };
  await page.locator("main details").evaluateAll(unfold);
  await page.evaluate(axe);
  const findings = (await page.evaluate("axe.run().then((result) => result.violations)")) as AxeFinding[];
  const grave = findings.filter(({ impact }) => impact === "serious" || impact === "critical");
  expect(grave.map(({ id, nodes }) => `${id}: ${nodes[0]?.html} ${nodes[0]?.failureSummary}`)).toEqual([]);

  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(overflow, "the page scrolls sideways").toBeLessThanOrEqual(0);
  const bare = page.locator("figure.figure:has(svg):not(:has(.basis .counts))");
  expect(await bare.evaluateAll((all) => all.map(({ id }) => id)), "figures without a basis").toEqual([]);
  expect(await page.locator(".observablehq--error").count(), "error boxes").toBe(0);
  expect(await page.locator("aside.notice").first().innerText()).toContain("no evidence about Japanese");
  expect(await page.locator("footer").innerText()).toContain(notSaid);
  expect(faults).toEqual([]);
  return page;
}

describe.each([...sitePages, { file: "dataset-by-ear" }])("page $file", ({ file }) => {
  test.each(looks)("opens at $width px, $colorScheme, without a fault", async (look) => {
    const page = await lookAt(file, look, "licensed professional");
    await page.context().close();
  });
});

/** The widths and colours are those of the first language: one look each at what the words change. */
describe.each(sitePages)("page $file in Japanese", ({ file }) => {
  test("opens on a telephone without a fault, says its name and leads to its twin", async () => {
    const page = await lookAt(`ja/${file}`, { colorScheme: "light", width: 360 }, "資格のある専門家");
    expect(await page.locator("html").getAttribute("lang")).toBe("ja");
    expect(await page.locator("h1").textContent()).toMatch(/[\p{Script=Hiragana}\p{Script=Han}]/u);
    await page.locator("nav.languages a").click();
    await page.waitForURL(`${open.url}${file === "index" ? "" : file}`);
    expect(await page.locator("html").getAttribute("lang")).toBe("en");
    await page.context().close();
  });
});
