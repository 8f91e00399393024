import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildSite } from "../../src/publish/buildSite.ts";
import { type Served, serve } from "../../src/publish/serve.ts";
import { launchBrowser } from "./browser.ts";
import { writeTokenResults } from "./fixtures/writeTokens.ts";

let folder: string;
let browser: Browser;
let served: Served;
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-labels-"));
  const [results, site] = [path.join(folder, "results"), path.join(folder, "site")];
  await writeTokenResults(results);
  await buildSite({ results, out: site });
  served = await serve({ site });
  browser = await launchBrowser();
}, 240_000);
afterAll(async () => {
  await browser?.close();
  await served?.close();
  await rm(folder, { recursive: true, force: true });
});

/** Texts of pictures that reach more than a pixel beyond their picture's left or right edge. */
const beyond = `[...document.querySelectorAll("main svg")].flatMap((picture) => {
  const edge = picture.getBoundingClientRect();
  return [...picture.querySelectorAll("text")]
    .filter((text) => {
      const { left, right, width } = text.getBoundingClientRect();
      return width > 0 && (left < edge.left - 1 || right > edge.right + 1);
    })
    .map((text) => (picture.closest("figure")?.id ?? "") + ": " + text.textContent);
})`;

const pages = ["", "devoicing", "length", "timing", "vowel-space", "colouring", "what-matters", "rules"];

describe.each(["", "ja/"])("pictures of /%s", (language) => {
  test.each([360, 1280])("hold all their labels at %d px", async (width) => {
    const page = await browser.newPage({ viewport: { width, height: 900 } });
    const cut: string[] = [];
    let pictures = 0;
    for (const name of pages) {
      await page.goto(`${served.url}${language}${name}`, { waitUntil: "networkidle" });
      await page.waitForFunction("document.querySelector('[data-waiting]') === null");
      pictures += await page.locator("main svg").count();
      cut.push(...((await page.evaluate(beyond)) as string[]).map((text) => `${name} ${text}`));
    }
    await page.close();
    expect(pictures).toBeGreaterThan(20);
    expect(cut).toEqual([]);
  });
});
