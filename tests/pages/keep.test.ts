import { readFile } from "node:fs/promises";
import { parse as parseBibtex } from "@retorquere/bibtex-parser";
import { Ajv } from "ajv";
import { parse as parseCsv } from "csv-parse/sync";
import { decode } from "fast-png";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { cslSchema } from "../reference/publish/cslSchema.ts";
import { smallResults } from "./fixtures/writeResults.ts";
import { type OpenSite, openSite } from "./openSite.ts";
import { watchPage } from "./watchPage.ts";

const isCsl = new Ajv({ allowUnionTypes: true }).compile(cslSchema);

let open: OpenSite;
let context: BrowserContext;
let page: Page;
let faults: string[];
beforeAll(async () => {
  open = await openSite(smallResults);
});
afterAll(() => open?.close());
beforeEach(async () => {
  context = await open.browser.newContext({
    viewport: { width: 1200, height: 900 },
    colorScheme: "dark",
    permissions: ["clipboard-read", "clipboard-write"],
  });
  page = await context.newPage();
  faults = watchPage(page, open.url);
});
afterEach(async () => {
  expect(faults).toEqual([]);
  await context.close();
});

async function visit(address: string): Promise<void> {
  await page.goto(open.url + address, { waitUntil: "networkidle" });
}

async function saved(press: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent("download"), press()]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

const tool = (figure: string, key: string) => page.locator(`[data-key="${figure}-${key}"]`);
const copied = () => page.evaluate(() => navigator.clipboard.readText());

test("the numbers are saved with dataset, version, licence, filter, software, date and address in every row", async () => {
  await visit("devoicing?before=s&after=k");
  const { name, bytes } = await saved(() => tool("devoicing-rates", "csv").click());
  expect(name).toBe("devoicing-rates.csv");
  const rows = parseCsv(bytes, { columns: true, bom: true }) as Record<string, string>[];
  expect(rows).toHaveLength(2);
  for (const row of rows) {
    expect(row).toMatchObject({
      dataset: "Marks by ear",
      "dataset version": "1",
      licence: "invented for tests",
      software: "Morascope 0.1.0",
      "results of": "2026-01-02",
    });
    expect(row).not.toHaveProperty("address"); // nobody else could follow that of a report served on this machine
    expect(row.filter).toContain("Sound before: s");
    expect(row["basis in words"]).toMatch(/^10 vowels, 5 speakers/);
  }
  await tool("devoicing-rates", "copy").press("Enter");
  await page.locator("#devoicing-rates .kept", { hasText: "Copied" }).waitFor();
  expect(parseCsv(await copied(), { columns: true })).toEqual(rows);
});

test("of a report in public, the numbers carry the address that the citation gives", async () => {
  const elsewhere = await open.browser.newContext();
  await elsewhere.route("http://sounds.example.org/**", async (route) => {
    const { pathname, search } = new URL(route.request().url());
    await route.fulfill({ response: await route.fetch({ url: new URL(pathname + search, open.url).href }) });
  });
  page = await elsewhere.newPage();
  await page.goto("http://sounds.example.org/devoicing?before=s", { waitUntil: "networkidle" });
  const { bytes } = await saved(() => tool("devoicing-rates", "csv").click());
  const [row] = parseCsv(bytes, { columns: true, bom: true }) as Record<string, string>[];
  const address = "http://sounds.example.org/devoicing?before=s#devoicing-rates";
  expect(row!.address).toBe(address);
  await tool("devoicing-rates", "cite").press("Enter");
  expect(await page.locator("#devoicing-rates .citation pre").first().textContent()).toContain(address);
  await elsewhere.close();
});

test("only the picture of two cuts names the second cut, and each what it counts", async () => {
  await visit("devoicing?second-after=voiced");
  const filterOf = async (figure: string) => {
    const { bytes } = await saved(() => tool(figure, "csv").click());
    const [row] = parseCsv(bytes, { columns: true, bom: true }) as Record<string, string>[];
    await tool(figure, "cite").press("Enter");
    for (const form of await page.locator(`#${figure} .citation pre`).allTextContents())
      expect(form.includes("any voiced sound")).toBe(row!.filter!.includes("any voiced sound"));
    return row!.filter;
  };
  const around = "Sound before: any voiceless but ッ; Sound after: any voiceless but ッ; ";
  const rest = "Vowel length: short; Position between pauses: any; Speaker: all (6)";
  expect(await filterOf("devoicing-rates")).toBe(`Vowels: i, ɯ (u); ${around}${rest}; Compare by: vowel`);
  expect(await filterOf("devoicing-environments")).toBe(`Vowels: i, ɯ (u); ${rest}`);
  expect(await filterOf("devoicing-speakers")).toBe(`Vowels: i, ɯ (u); ${around}${rest}`);
  expect(await filterOf("devoicing-two-cuts")).toBe(
    "first: vowels: i, ɯ (u); sound before: any voiceless but ッ; sound after: any voiceless but ッ; vowel length: short. second: vowels: i, ɯ (u); sound before: any voiceless but ッ; sound after: any voiced sound; vowel length: short.",
  );
});

test.each([
  ["devoicing", "devoicing-rates"],
  ["devoicing", "devoicing-environments"],
  ["devoicing", "devoicing-speakers"],
  ["length", "vowel-length-durations"],
  ["length", "gemination-ratios"],
])(
  "%s: the picture %s is saved as SVG that needs nothing else, on a light ground, and as PNG twice its size",
  async (file, figure) => {
    await visit(file);
    const { bytes } = await saved(() => tool(figure, "svg").click());
    const svg = bytes.toString();
    const finding = (await page.locator(`#${figure}-finding`).textContent()) ?? "";
    const read = await page.evaluate((text) => {
      const drawing = new DOMParser().parseFromString(text, "image/svg+xml");
      const root = drawing.documentElement;
      const texts = [...drawing.querySelectorAll("text")];
      return {
        root: root.tagName,
        size: ["width", "height"].map((name) => Number(root.getAttribute(name))),
        title: root.querySelector("title")?.textContent,
        description: root.querySelector("desc")?.textContent ?? "",
        ground: root.querySelector("rect")?.getAttribute("fill"),
        unnamed: texts.filter((one) => one.closest("[font-family]") === null).length,
        texts: texts.length,
      };
    }, svg);
    expect(read).toMatchObject({ root: "svg", title: finding, ground: "#fffefb", unnamed: 0 });
    expect(read.texts).toBeGreaterThan(5);
    expect(read.description).toContain("Marks by ear");
    expect(read.description).toContain("no evidence about Japanese");
    expect(svg).not.toMatch(/var\(|class=|color-mix|oklab|<style|<foreignObject/);
    const png = decode((await saved(() => tool(figure, "png").click())).bytes);
    expect([png.width, png.height]).toEqual(read.size.map((side) => 2 * side));
    expect([...png.data.slice(0, 3)]).toEqual([255, 254, 251]);
  },
);

test("a figure is cited as text, BibTeX and CSL-JSON, with what is chosen at that moment", async () => {
  await visit("length");
  await tool("vowel-length-ratios", "cite").press("Enter");
  await page.selectOption("select[name=position]", "medial");
  const [text, bibtex, csl] = await page.locator("#vowel-length-ratios .citation pre").allTextContents();
  for (const part of [
    "Marks by ear, version 1, invented for tests",
    "Position between pauses: medial",
    "Morascope 0.1.0",
    "results of 2026-01-02",
  ])
    expect(text).toContain(part);
  for (const form of [text, bibtex, csl]) expect(form).not.toContain(new URL(open.url).host);
  expect(parseBibtex(bibtex!).errors).toEqual([]);
  expect(parseBibtex(bibtex!).entries.map(({ key }) => key)).toEqual([
    "morascope-vowel-length-ratios",
    "by-ear",
    "morascope",
  ]);
  expect(isCsl(JSON.parse(csl!)), JSON.stringify(isCsl.errors)).toBe(true);
  const { name, bytes } = await saved(() =>
    page.locator("#vowel-length-ratios").getByRole("button", { name: "Save (.bib)" }).click(),
  );
  expect(name).toBe("vowel-length-ratios.bib");
  expect(bytes.toString()).toBe(bibtex);
  await page.locator("#vowel-length-ratios").getByRole("button", { name: "Copy: As text" }).click();
  await page.locator("#vowel-length-ratios .kept", { hasText: "Copied" }).waitFor();
  expect(await copied()).toBe(text);
});

test("an address that names a figure brings it into sight, and the link to it can be copied", async () => {
  await visit("length#gemination-speakers");
  await page.waitForFunction(() => {
    const top = document.querySelector("#gemination-speakers")?.getBoundingClientRect().top ?? -1;
    return top >= 0 && top < innerHeight;
  });
  await tool("gemination-speakers", "link").click();
  await page.locator("#gemination-speakers .kept", { hasText: "copied" }).waitFor();
  expect(await copied()).toBe(`${open.url}length#gemination-speakers`);
});

test("answers of the start page and verdicts of rules can be kept and cited", async () => {
  await visit("");
  const first = page.locator("details.keep").first();
  await first.locator("> summary").press("Enter");
  const { bytes } = await saved(() => first.getByRole("button", { name: "Save numbers" }).click());
  const rows = parseCsv(bytes, { columns: true, bom: true }) as Record<string, string>[];
  expect(rows.map((row) => row.sound)).toEqual(["i", "ɯ (u)"]);
  expect(Number(rows[0]!.low)).toBeLessThan(Number(rows[0]!.high));
  await visit("rules");
  const verdict = page.locator("[data-keep] details.keep").first();
  await verdict.locator("> summary").press("Enter");
  await verdict.locator(".cite-figure summary").press("Enter");
  const [text] = await verdict.locator(".citation pre").allTextContents();
  expect(text).toContain(
    (await page.locator("[data-keep] .sentence").first().textContent())!.replace(/\.$/, ""),
  );
});

test("the page on citing names every dataset, and its files hold datasets, results and software", async () => {
  await visit("cite");
  const names = await page.locator("main h3").allTextContents();
  expect(names).toEqual(["Marks by ear", "Marks by rule", "One voice, no marks"]);
  const csl = JSON.parse(
    (await saved(() => page.getByRole("link", { name: "Save all as CSL-JSON" }).click())).bytes.toString(),
  );
  expect(isCsl(csl), JSON.stringify(isCsl.errors)).toBe(true);
  expect(csl.map(({ id }: { id: string }) => id)).toEqual([
    "morascope-results-2026-01-02",
    "by-ear",
    "by-rule",
    "no-marks",
    "morascope",
  ]);
  const bib = parseBibtex(
    (await saved(() => page.getByRole("link", { name: "Save all as BibTeX" }).click())).bytes.toString(),
  );
  expect(bib.errors).toEqual([]);
  expect(bib.entries).toHaveLength(5);
  await page.getByRole("button", { name: "Copy: As text" }).first().click();
  await page.locator(".kept", { hasText: "Copied" }).waitFor();
  expect(await copied()).toBe(await page.locator(".citation pre").first().textContent());
});
