import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildSite } from "../../src/publish/buildSite.ts";
import { type Served, serve } from "../../src/publish/serve.ts";
import { sitePages } from "../../src/publish/siteConfig.ts";
import { launchBrowser } from "./browser.ts";
import { englishLeft } from "./englishLeft.ts";
import { smallResults, writeResults } from "./fixtures/writeResults.ts";
import { writeTokenResults } from "./fixtures/writeTokens.ts";

/** What stays in English on the Japanese pages, each piece marked as English: whose words it is, is said beside it. */
const places = [
  '.claim-ja[lang="en"]', // a rule in the other language
  '.source [lang="en"]', // citations
  '.band-note [lang="en"]',
  '.method-note [lang="en"]',
  '.citation[lang="en"]',
  'small[lang="en"]',
  'td[lang="en"], td > [lang="en"]:only-child', // columns of the dictionary, remarks of the program, notes of cards
  '.facts [lang="en"]', // licences and credits
  '.credits [lang="en"]',
  '.notice [lang="en"], section.card > p > [lang="en"]', // what a card that we do not know says of its data
];
const names = smallResults.cards.map(({ name }) => name);
const files = sitePages.map(({ file }) => file);

let folder: string;
let browser: Browser;
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-japanese-"));
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

async function english(address: string): Promise<readonly unknown[]> {
  const page = await browser.newPage();
  await page.goto(address, { waitUntil: "networkidle" });
  await page.waitForFunction("document.querySelector('[data-waiting]') === null");
  const unfold = (all: Element[]) => {
    for (const details of all as HTMLDetailsElement[]) details.open = true;
  };
  await page.locator("main details").evaluateAll(unfold);
  await page.waitForTimeout(100);
  const found = await englishLeft(page, { places, names });
  await page.close();
  return found;
}

describe.each([
  {
    of: "counts alone, in three datasets",
    write: (results: string) => writeResults(results, smallResults),
    pages: [...files, ...smallResults.cards.map(({ id }) => `dataset-${id}`)],
  },
  {
    of: "single sounds",
    write: (results: string) => writeTokenResults(results),
    pages: ["devoicing", "length", "timing", "vowel-space", "colouring", "what-matters", "listen", "rules"],
  },
])("on the Japanese pages of $of", ({ of, write, pages }) => {
  let served: Served;
  beforeAll(async () => {
    const [results, site] = [path.join(folder, of, "results"), path.join(folder, of, "site")];
    await write(results);
    await buildSite({ results, out: site });
    served = await serve({ site });
  }, 240_000);
  afterAll(() => served?.close());

  test.each(pages)(
    "%s holds no English but citations, licences, names and the words of columns",
    async (file) => {
      expect(await english(`${served.url}ja/${file === "index" ? "" : file}`)).toEqual([]);
    },
  );
});

test("englishLeft() finds a sentence in a text, a picture and a name, and leaves out what is allowed", async () => {
  const page = await browser.newPage();
  await page.setContent(
    '<p>これは a sentence that stays in English です</p><svg aria-label="one more of these sentences"></svg>' +
      '<p class="source"><span lang="en">Somebody A. (1999) A work of some length</span></p><p>Marks by ear の話者</p>',
  );
  const found = await englishLeft(page, { places: ['.source [lang="en"]'], names: ["Marks by ear"] });
  expect(found.map(({ place }) => place.split(" > ").at(-1))).toEqual(["p", "svg"]);
  await page.close();
});
