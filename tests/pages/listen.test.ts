import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { type Served, serve } from "../../src/publish/serve.ts";
import { runPipeline } from "../../src/runPipeline.ts";
import { readColumns } from "../../src/storage/readColumns.ts";
import { writeDemoPart } from "../helpers/demoPart.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { keptFolder } from "../helpers/tempFolder.ts";
import { launchBrowser } from "./browser.ts";
import { watchPage } from "./watchPage.ts";

const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Six recordings of the demo as a person labelled them, with devoicing measured; an excerpt of two may be published. */
const dataset = keptFolder();
const results = keptFolder();
let browser: Browser;
let served: Served;
let local: Served;
let page: Page;
let faults: string[];

beforeAll(async () => {
  writeDemoPart(dataset, { speakers: ["demo-01", "demo-03"], each: 3, labels: true });
  const file = join(dataset, "dataset.json");
  const card = JSON.parse(readFileSync(file, "utf8"));
  card.labelSets = card.labelSets.map((set: object) => ({ ...set, devoicingBasis: null }));
  card.redistribution = { kind: "excerpt", utterances: 2, note: "Two recordings may be passed on." };
  writeFileSync(file, JSON.stringify(card));
  await runPipeline(runOptions([dataset], results, { report: true }));
  const site = join(results, "site");
  served = await serve({ site });
  local = await serve({ site, local: { results, folders: { demo: dataset } } });
  browser = await launchBrowser();
}, 300_000);
afterAll(async () => {
  await browser?.close();
  await served?.close();
  await local?.close();
});
beforeEach(async () => {
  page = await browser.newPage({ viewport: { width: 1300, height: 1000 } });
});
afterEach(async () => {
  expect(faults).toEqual([]);
  await page.close();
});

async function visit(query: string, { url }: Served = served): Promise<void> {
  faults = watchPage(page, url);
  await page.goto(`${url}listen${query}`, { waitUntil: "networkidle" });
  await page.waitForSelector("#listen-sound .strip");
}

const card = () => page.locator("#listen-sound");
const finding = async () => (await card().locator(".finding-line").textContent())!;
const found = async () =>
  Number.parseInt((await page.locator(".found").textContent())!.replaceAll(",", ""), 10);
const tokens = async () => {
  const names = ["utterance", "index", "phone", "kind", "devoiced", "devoicedBasis", "devoicedProbability"];
  const columns = await readColumns(join(results, "tokens.parquet"), names);
  return columns.index!.map((_, i) => Object.fromEntries(names.map((name) => [name, columns[name]![i]])));
};

/** An utterance whose recording the excerpt holds. */
function audible(): string {
  const data = join(results, "site", "_file", "data");
  const file = readdirSync(data).find((name) => /^listen\..*json$/.test(name))!;
  const { utterances } = JSON.parse(readFileSync(join(data, file), "utf8"));
  const heard = utterances.filter(({ clip }: { clip: string | null }) => clip !== null);
  expect(heard.length).toBe(2);
  return heard[0].utterance;
}

describe("finding sounds", () => {
  test("by sound and decision: as many as the tables hold, in the address, and back undoes it", async () => {
    await visit("");
    const high = (await tokens()).filter(({ phone }) => phone === "i" || phone === "u");
    expect(await found()).toBe(high.length);
    await page.selectOption("select[name=decision]", "devoiced");
    expect(await found()).toBe(high.filter(({ devoiced }) => devoiced).length);
    expect(new URL(page.url()).search).toBe("?decision=devoiced");
    expect(await finding()).toMatch(/^Devoiced, /);
    await page.goBack();
    expect(await found()).toBe(high.length);
  });

  test("by word in Latin letters and in kana, and by a measured value", async () => {
    await visit("?sound=any");
    await page.fill("input[name=word]", "kitakaze");
    await page.keyboard.press("Enter");
    const latin = await found();
    expect(latin).toBeGreaterThan(7);
    await page.fill("input[name=word]", "きたかぜ");
    await page.keyboard.press("Enter");
    expect(await found()).toBe(latin);
    await visit("?sound=any&from=100");
    const long = await readColumns(join(results, "tokens.parquet"), ["durationMs"]);
    expect(await found()).toBe(long.durationMs!.filter((ms) => Number(Number(ms).toFixed(1)) >= 100).length);
  });

  test("nearest to the boundary first is the decision least sure of itself", async () => {
    await visit("?order=boundary&sound=vowel");
    const key = (await page.locator(".token-row").first().getAttribute("data-key"))!;
    const least = Math.min(
      ...(await tokens())
        .filter(({ devoicedProbability }) => devoicedProbability !== null)
        .map(({ devoicedProbability }) => Math.abs(Number(devoicedProbability) - 0.5)),
    );
    expect(key).toMatch(/^row-\d+$/);
    await card().locator("details.numbers summary").click();
    const shown = card().locator("tbody tr", { hasText: "devoicedProbability" }).locator("td").first();
    expect(Math.abs(Number.parseFloat((await shown.textContent())!) - 0.5)).toBeCloseTo(least, 3);
  });

  test("a sound is chosen by key, stands in the address, and a shared address shows it again", async () => {
    await visit("");
    await page.locator(".token-row").nth(3).focus();
    await page.keyboard.press("Enter");
    const address = new URL(page.url()).search;
    expect(address).toMatch(/^\?token=demo-0/);
    expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-current"))).toBe("true");
    const said = await finding();
    await visit(address);
    expect(await finding()).toBe(said);
    expect(await card().locator(".question").textContent()).toContain("Sound 4 of");
  });
});

describe("hearing", () => {
  test("plays a stretch slowly and a mora over and over, by keys alone, and draws the spectrogram", async () => {
    await visit(`?token=${audible()}:1&sound=any`);
    const play = card().locator("button.play");
    await play.waitFor();
    await page.waitForFunction(() => !document.querySelector<HTMLButtonElement>("button.play")!.disabled);
    const ink = await page.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>("canvas.spectrum")!;
      const { data } = canvas.getContext("2d")!.getImageData(0, 0, canvas.width, canvas.height);
      return data.filter((value, i) => i % 4 === 3 && value > 100).length / (data.length / 4);
    });
    expect(ink).toBeGreaterThan(0.01);
    expect(ink).toBeLessThan(0.6);
    await card().locator("input[name=speed][value='0.5']").check();
    await play.focus();
    await page.keyboard.press("Space");
    await page.locator(".playhead:not([hidden])").waitFor();
    await page.keyboard.press("Space");
    await page.locator(".playhead[hidden]").waitFor({ state: "attached" });
    await card().locator(".mora[tabindex='0']").focus();
    await page.keyboard.press("Home");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Enter");
    await page.locator(".mora[aria-pressed=true]").waitFor();
    expect(await card().locator(".play-status").textContent()).toContain("over and over");
    await page.keyboard.press("Enter");
    await page.locator(".mora[aria-pressed=true]").waitFor({ state: "detached" });
  });

  test("beyond the excerpt says why nothing can be heard, and shows the measures all the same", async () => {
    const heard = audible();
    const other = (await tokens()).find(({ utterance, kind }) => utterance !== heard && kind === "vowel")!;
    const silent = [...new Set((await tokens()).map(({ utterance }) => utterance))];
    expect(silent.length).toBe(6);
    let quiet = 0;
    for (const utterance of silent) {
      await visit(`?token=${utterance}:${other.index}&sound=any`);
      if ((await card().locator("button.play").count()) > 0) continue;
      quiet++;
      expect(await card().locator(".play-status").textContent()).toContain(
        "Two recordings may be passed on.",
      );
      expect(await card().locator(".why").textContent()).not.toBe("");
    }
    expect(quiet).toBe(4);
  });

  test("served from the results, every recording is played, and only from this machine's folders", async () => {
    const ids = [...new Set((await tokens()).map(({ utterance }) => utterance))];
    for (const utterance of ids) {
      await visit(`?token=${utterance}:1&sound=any`, local);
      await page.waitForFunction(
        () => document.querySelector<HTMLButtonElement>("button.play")?.disabled === false,
      );
    }
    expect(await page.locator(".listen-about").textContent()).toContain("Served from this computer");
  });
});

test.each(["light", "dark"] as const)(
  "nothing that axe finds grave, with everything unfolded, %s",
  async (colorScheme) => {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await visit("");
    await page.locator("main details").evaluateAll((all) => {
      for (const details of all as HTMLDetailsElement[]) details.open = true;
    });
    await page.evaluate(axe);
    const violations = (await page.evaluate("axe.run().then((result) => result.violations)")) as {
      id: string;
      impact: string;
      nodes: { html: string; failureSummary: string }[];
    }[];
    const grave = violations.filter(({ impact }) => impact === "serious" || impact === "critical");
    expect(grave.map(({ id, nodes }) => `${id}: ${nodes[0]?.html} ${nodes[0]?.failureSummary}`)).toEqual([]);
  },
);

test("a mark outlives a reload, is downloaded, fed back to a run, and the vowel is annotated then", async () => {
  await visit("?sound=vowel&order=boundary");
  const called = await finding();
  const other = called.startsWith("Devoiced") ? "voiced" : "devoiced";
  await page.locator(".token-row").first().click();
  const address = new URL(page.url()).search;
  await card().locator(`.marks input[value=${other}]`).check();
  expect(await page.locator(".token-row[aria-current]").textContent()).toContain("✎");
  await visit(address);
  expect(await card().locator(`.marks input[value=${other}]`).isChecked()).toBe(true);
  await visit("?sound=vowel&decision=marked");
  expect(await found()).toBe(1);
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    card().getByRole("button", { name: "Download the marks" }).click(),
  ]);
  expect(saved.suggestedFilename()).toBe("marks-demo-1.csv");
  const marks = join(keptFolder(), saved.suggestedFilename());
  await saved.saveAs(marks);

  const corrected = keptFolder();
  const record = await runPipeline(runOptions([dataset], corrected, { report: true, corrections: [marks] }));
  expect(record.corrections).toMatchObject({ marks: 1, used: 1, tokens: 1 });
  const again = await serve({ site: join(corrected, "site") });
  await visit(address.replace("order=boundary", "order=corpus"), again);
  expect(await finding()).toMatch(
    new RegExp(
      `^${other === "voiced" ? "Voiced" : "Devoiced"}, by (?:a person’s|its maker’s or a reader’s) mark`,
    ),
  );
  await page.goto(`${again.url}method`, { waitUntil: "networkidle" });
  expect(await page.locator("main").textContent()).toContain(
    "1 vowel of these results was corrected by a reader",
  );
  await again.close();
}, 300_000);
