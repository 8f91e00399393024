import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { chanceOf, type DevoicingTable } from "../../src/findings/words/devoicingTable.ts";
import type { DrillWords } from "../../src/findings/words/drillWords.ts";
import { vowelsOf } from "../../src/findings/words/environment.ts";
import { packDevoicing } from "../../src/findings/words/packWords.ts";
import { soundOf } from "../../src/findings/words/sound.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { smallResults } from "./fixtures/writeResults.ts";
import { type OpenSite, openSite } from "./openSite.ts";
import { watchPage } from "./watchPage.ts";

const text = interfaceText().lookUp;
const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
let open: OpenSite;
let devoicing: DevoicingTable;
let page: Page;
let faults: string[];
beforeAll(async () => {
  open = await openSite(smallResults);
  const words: DrillWords = JSON.parse(await readFile(path.join(open.results, "drill-words.json"), "utf8"));
  devoicing = packDevoicing(words.devoicing);
});
afterAll(() => open?.close());
beforeEach(async () => {
  page = await open.browser.newPage({ viewport: { width: 1200, height: 1000 } });
  faults = watchPage(page, open.url);
});
afterEach(async () => {
  expect(faults).toEqual([]);
  await page.close();
});

const percents = () => page.locator(".beat strong").allTextContents();
const expected = (kana: string, accent: number | null) =>
  vowelsOf(soundOf(kana)!, accent).map((vowel) =>
    text.percent(chanceOf(devoicing, vowel).estimate ?? Number.NaN),
  );

async function type(word: string): Promise<void> {
  await page.fill("input[name=word]", word);
  await page.waitForFunction((word) => new URLSearchParams(location.search).get("word") === word, word);
}

describe("look up a word", () => {
  test("kana typed gives its beats with the model's chances, and the accent moves them", async () => {
    await page.goto(`${open.url}look-up`, { waitUntil: "networkidle" });
    await type("きくち");
    expect(await page.locator(".beat .box").allTextContents()).toEqual(["キ", "ク", "チ"]);
    expect(await percents()).toEqual(expected("キクチ", null));
    await page.locator('input[name=accent][value="1"]').check();
    expect(await percents()).toEqual(expected("キクチ", 1));
    expect(expected("キクチ", 1)).not.toEqual(expected("キクチ", 0));
    expect(await page.locator(".accent-moves").first().textContent()).toContain("with the accent on it");
    await page.reload({ waitUntil: "networkidle" });
    expect(await percents()).toEqual(expected("キクチ", 1));
  });

  test("romaji is read, long vowels of kana spelling are offered both ways, and ッ and ン are beats", async () => {
    await page.goto(`${open.url}look-up`, { waitUntil: "networkidle" });
    await type("shinbun");
    expect(await page.locator(".beat .box").allTextContents()).toEqual(["シ", "ン", "ブ", "ン"]);
    await type("がっこう");
    expect(await page.locator(".beat .box").allTextContents()).toEqual(["ガ", "ッ", "コ", "ー"]);
    await page.locator("input[name=as][value=apart]").check();
    expect(await page.locator(".beat .box").allTextContents()).toEqual(["ガ", "ッ", "コ", "ウ"]);
  });

  test("kanji is told that kana is needed, with the terminal's command; other letters are named", async () => {
    await page.goto(`${open.url}look-up?word=${encodeURIComponent("菊")}`, { waitUntil: "networkidle" });
    const told = await page.locator(".cannot-read").innerText();
    expect(told).toContain(text.kanji("菊"));
    expect(told).toContain(text.command("菊"));
    await type("きQ9");
    expect(await page.locator(".cannot-read").innerText()).toContain("Q9");
  });

  test("the word itself, said in the corpus, is nearest to hear, and why its share is not the expected one is told", async () => {
    await page.goto(`${open.url}look-up?word=${encodeURIComponent("きく")}`, { waitUntil: "networkidle" });
    const card = page.locator(".vowel-card").first();
    const { tokens, how } = chanceOf(devoicing, vowelsOf(soundOf("キク")!, null)[0]!);
    expect({ how, heard: tokens > 0 }).toEqual({ how: "model", heard: true });
    expect(await card.innerText()).toContain(text.expectedByModel(devoicing.tokens - tokens));
    expect(await card.innerText()).toContain(text.eachWord);
    const near = card.locator(".near li").first();
    expect(await near.innerText()).toContain("菊 キク");
    const [answer] = await Promise.all([page.waitForResponse(/recordings/), near.locator(".hear").click()]);
    expect(answer.ok()).toBe(true);
  });

  test("loads nothing over 200 kB of its own, and answers in less than 50 ms", async () => {
    const large: string[] = [];
    page.on("response", async (response) => {
      const size = (await response.body().catch(() => Buffer.alloc(0))).length;
      if (size > 200_000 && !/\.(?:js|css)$/.test(new URL(response.url()).pathname))
        large.push(response.url());
    });
    await page.goto(`${open.url}look-up`, { waitUntil: "networkidle" });
    for (const word of ["きく", "しつもん", "がっこう", "ふくしゅう", "チカテツ"]) await type(word);
    const times = await page.evaluate(() =>
      performance.getEntriesByName("look-up").map((entry) => entry.duration),
    );
    expect(times.length).toBeGreaterThanOrEqual(6);
    console.log(`look-ups: ${times.map((time) => time.toFixed(1)).join(", ")} ms`);
    expect([...times].sort((a, b) => a - b)[Math.floor(times.length / 2)]).toBeLessThan(50);
    expect(large).toEqual([]);
  });

  test.each(["light", "dark"] as const)(
    "a word looked up has no serious fault for a screen reader, %s",
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme });
      await page.goto(`${open.url}look-up?word=${encodeURIComponent("きってく")}&accent=2`, {
        waitUntil: "networkidle",
      });
      await page.evaluate(axe);
      const found = (await page.evaluate("axe.run().then((result) => result.violations)")) as {
        id: string;
        impact: string;
      }[];
      expect(found.filter(({ impact }) => /serious|critical/.test(impact)).map(({ id }) => id)).toEqual([]);
    },
  );
});
