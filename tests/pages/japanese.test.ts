import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { sitePages } from "../../src/publish/siteConfig.ts";
import { englishLeft } from "./englishLeft.ts";
import { smallResults } from "./fixtures/writeResults.ts";
import { type OpenSite, openSite } from "./openSite.ts";

let open: OpenSite;
beforeAll(async () => {
  open = await openSite(smallResults);
});
afterAll(() => open?.close());

/** What stays in English on the Japanese pages, each piece marked as English: whose words it is, is said beside it. */
const places = [
  '.claim-ja[lang="en"]', // a rule in the other language
  '.source [lang="en"]', // citations
  '.band-note [lang="en"]',
  '.method-note [lang="en"]',
  '.citation[lang="en"]',
  'small[lang="en"]',
  'td[lang="en"]', // columns of the dictionary, remarks of the program, notes of cards
  '.facts [lang="en"]', // licences and credits
  '.credits [lang="en"]',
  '.notice [lang="en"], section.card > p > [lang="en"]', // what a card that we do not know says of its data
];

const pages = [...sitePages.map(({ file }) => file), "dataset-by-ear", "dataset-by-rule", "dataset-no-marks"];

describe.each(pages)("page %s in Japanese", (file) => {
  test("holds no English but citations, licences, names and the words of columns", async () => {
    const page = await open.browser.newPage();
    await page.goto(`${open.url}ja/${file === "index" ? "" : file}`, { waitUntil: "networkidle" });
    if (/^(devoicing|length)$/.test(file)) {
      await page.waitForSelector(".figure svg");
      await page.waitForFunction("document.querySelector('[data-waiting]') === null");
    }
    const unfold = (all: Element[]) => {
      for (const details of all as HTMLDetailsElement[]) details.open = true;
    };
    await page.locator("main details").evaluateAll(unfold);
    await page.waitForTimeout(100);
    const names = smallResults.cards.map(({ name }) => name);
    expect(await englishLeft(page, { places, names })).toEqual([]);
    await page.close();
  });
});

test("englishLeft() finds a sentence in a text, a picture and a name, and leaves out what is allowed", async () => {
  const page = await open.browser.newPage();
  await page.setContent(
    '<p>これは a sentence that stays in English です</p><svg aria-label="one more of these sentences"></svg>' +
      '<p class="source"><span lang="en">Somebody A. (1999) A work of some length</span></p><p>Marks by ear の話者</p>',
  );
  const found = await englishLeft(page, { places: ['.source [lang="en"]'], names: ["Marks by ear"] });
  expect(found.map(({ place }) => place.split(" > ").at(-1))).toEqual(["p", "svg"]);
  await page.close();
});
