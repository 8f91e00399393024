import { writeFile } from "node:fs/promises";
import path from "node:path";
import { buildSite } from "../../src/publish/buildSite.ts";
import { serve } from "../../src/publish/serve.ts";
import { inventDrillWords } from "../pages/fixtures/writeDrillWords.ts";
import { smallResults } from "../pages/fixtures/writeResults.ts";
import { openSite } from "../pages/openSite.ts";

// Opens the page of drill words with 5,000 candidates of one target in Chromium, filters them and scrolls through all.
// Promise: no dropped second, that is no gap of a second between two frames.

const wanted = 5000;
const open = await openSite(smallResults);
const { listing, ...words } = inventDrillWords("by-ear", 450, 2 * wanted);
const candidates = listing.candidates.filter(
  ({ target }) => target === "kept-voiced" || target === "devoiced-i",
);
const one = candidates.slice(0, wanted).map((candidate) => ({ ...candidate, target: "devoiced-i" as const }));
await writeFile(
  path.join(open.results, "drill-words.json"),
  JSON.stringify({ ...words, listing: { ...listing, candidates: one } }),
);
const out = path.join(path.dirname(open.site), "many");
await buildSite({ results: open.results, out });
const served = await serve({ site: out });
const page = await open.browser.newPage({ viewport: { width: 1280, height: 900 } });
const start = performance.now();
await page.goto(`${served.url}words`);
await page.waitForSelector(".word-item");
console.log(`${one.length} candidates: first words after ${(performance.now() - start).toFixed(0)} ms`);
await page.waitForLoadState("networkidle");

for (const [name, value] of [
  ["order", "kana"],
  ["order", "contrast"],
  ["before", "k"],
  ["before", "any"],
] as const)
  await page.selectOption(`select[name=${name}]`, value);
const redraws = await page.evaluate(() =>
  performance.getEntriesByName("redraw").map((entry) => entry.duration),
);
console.log(`filter and order: ${redraws.map((ms) => ms.toFixed(0)).join(", ")} ms`);

const scroll = await page.evaluate(async () => {
  const gaps: number[] = [];
  let last = await new Promise<number>((resolve) => requestAnimationFrame(resolve));
  let items = 0;
  const height = document.documentElement.scrollHeight;
  for (let y = 0; y < document.documentElement.scrollHeight; y += 700) {
    scrollTo(0, y);
    const now = await new Promise<number>((resolve) => requestAnimationFrame(resolve));
    gaps.push(now - last);
    last = now;
    items = Math.max(items, document.querySelectorAll(".word-item").length);
  }
  gaps.sort((a, b) => a - b);
  return { height, frames: gaps.length, median: gaps[gaps.length >> 1]!, longest: gaps.at(-1)!, items };
});
console.log(
  `scrolled ${scroll.height} px in ${scroll.frames} frames: median ${scroll.median.toFixed(0)} ms, longest ${scroll.longest.toFixed(0)} ms; at most ${scroll.items} words in the page at once`,
);
await served.close();
await open.close();
