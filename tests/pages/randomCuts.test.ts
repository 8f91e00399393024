import { execFileSync } from "node:child_process";
import type { Page } from "playwright-core";
import { unsafeUniformIntDistribution, xoroshiro128plus } from "pure-rand";
import { afterAll, beforeAll, expect, test } from "vitest";
import { registerRates } from "../../src/cli/rates.ts";
import { registerRatios } from "../../src/cli/ratios.ts";
import { resultsPlaceholder } from "../../src/publish/terminalCommand.ts";
import { runCommand } from "../helpers/runCommand.ts";
import { smallResults } from "./fixtures/writeResults.ts";
import { type OpenSite, openSite } from "./openSite.ts";
import { watchPage } from "./watchPage.ts";

const cuts = 50;
const seed = 20_261_125;

let open: OpenSite;
let page: Page;
let faults: string[];
beforeAll(async () => {
  const { recordings: _, ...unheard } = smallResults;
  open = await openSite(unheard);
  page = await open.browser.newPage({ viewport: { width: 1200, height: 900 } });
  faults = watchPage(page, open.url);
});
afterAll(() => open?.close());

type Fields = Readonly<Record<string, string>>;

/** Every option of the page's first form, field by field. */
function optionsOf(): Promise<Record<string, string[]>> {
  return page.evaluate(() => {
    const form = document.querySelector("form.choices")!;
    return Object.fromEntries(
      [...form.querySelectorAll("select")].map((field) => [
        field.name,
        [...field.options].map((option) => option.value),
      ]),
    );
  });
}

/** Goes to a view of the open page as the browser's back button does. */
async function go(address: string): Promise<void> {
  await page.evaluate((address) => {
    history.pushState(null, "", address);
    dispatchEvent(new PopStateEvent("popstate"));
  }, address);
  await page.waitForFunction(() => document.querySelector("[data-waiting]") === null);
}

/** The first columns of a figure's table, as printed; empty where there is no number. */
async function printedOnPage(figure: string, columns: number): Promise<string[]> {
  const details = page.locator(`#${figure} details.numbers`);
  if ((await details.count()) === 0) return [];
  if ((await details.getAttribute("open")) === null) await details.locator("summary").click();
  await details.locator("tbody tr").first().waitFor();
  const rows = await details
    .locator("tbody tr")
    .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent ?? "")));
  return rows.map((row) => plain(row.slice(1, columns).join(" | ")));
}

/** The arguments of the command below a figure's numbers, as a shell reads them; null where the figure has no numbers. */
async function commandOnPage(figure: string): Promise<string[] | null> {
  const shown = page.locator(`#${figure} .command-lines pre`);
  if ((await shown.count()) === 0) return null;
  const line = (await shown.textContent())!;
  const words = execFileSync("sh", ["-c", `printf '%s\\0' ${line}`], { encoding: "utf8" }).split("\0");
  expect(words.slice(0, 2)).toEqual(["npx", "morascope"]);
  return words.slice(2, -1).map((word) => (word === resultsPlaceholder ? open.results : word));
}

const plain = (text: string) => text.replaceAll("\u00a0", " ").replace(/\s+/g, " ").trim();

/** Rows of the terminal's printed table by their headings. */
function printedRows(table: string): Record<string, string>[] {
  const lines = table.split("\n").filter((line) => line.startsWith("│"));
  const [head, ...rows] = lines.map((line) => line.split("│").slice(1, -1).map(plain));
  return rows.map((row) => Object.fromEntries(head!.map((name, i) => [name, row[i]!])));
}

function flags(chosen: Fields, names: readonly string[]): string[] {
  return names.flatMap((name) =>
    chosen[name] === undefined || chosen[name] === "any" ? [] : [`--${name}`, chosen[name]],
  );
}

const bounds = (interval: string) => (interval === "–" ? ["–", "–"] : interval.split(" to "));

function ratesInTerminal(chosen: Fields): Promise<string[]> {
  return ratesBy([
    ...[
      "rates",
      open.results,
      "--dataset",
      chosen.set!.split("/")[0]!,
      "--by",
      chosen.by!,
      "--vowel",
      chosen.vowel!,
    ],
    ...["--length", chosen.length === "any" ? "all" : chosen.length!],
    ...flags(chosen, ["before", "after", "speaker", "position"]),
  ]);
}

async function ratesBy(args: readonly string[]): Promise<string[]> {
  const { out } = await runCommand(registerRates, ...args);
  return printedRows(out).map((row) => {
    const rate = row.devoiced!.includes("%") && /^[\d.]+ %$/.test(row.devoiced!) ? row.devoiced : "–";
    return [rate, ...bounds(row["95 % interval"]!)].join(" | ");
  });
}

function ratiosInTerminal(chosen: Fields, contrast: string): Promise<string[]> {
  return ratiosBy([
    ...[
      "ratios",
      open.results,
      "--dataset",
      chosen.set!.split("/")[0]!,
      "--by",
      chosen.by!,
      "--contrast",
      contrast,
    ],
    ...(contrast === "gemination" ? [] : ["--surroundings", chosen.surroundings!]),
    ...flags(chosen, ["speaker", "position"]),
  ]);
}

async function ratiosBy(args: readonly string[]): Promise<string[]> {
  const { out } = await runCommand(registerRatios, ...args);
  return printedRows(out)
    .filter((row) => row.ratio !== "–")
    .map((row) => [row.ratio!.replace("≥ ", ""), ...bounds(row["95 % interval"]!)].join(" | "));
}

test(`numbers on the pages equal the terminal's to the last printed digit, over ${cuts} random cuts, and so do the commands below the figures`, async () => {
  const generator = xoroshiro128plus(seed);
  const pick = <T>(of: readonly T[]): T => of[unsafeUniformIntDistribution(0, of.length - 1, generator)]!;
  const address = (file: string, chosen: Fields) => `/${file}?${new URLSearchParams(chosen)}`;
  let compared = 0;
  let commands = 0;
  for (const [file, first] of [
    ["devoicing", 0],
    ["length", cuts / 2],
  ] as const) {
    await page.goto(open.url + file, { waitUntil: "networkidle" });
    await page.waitForSelector(".figure");
    for (let i = first; i < first + cuts / 2; i++) {
      await go(address(file, { set: pick((await optionsOf()).set!) }));
      const options = await optionsOf();
      const fields = Object.fromEntries(
        Object.entries(options).map(([name, values]) => [
          name,
          pick(values.filter((value) => value !== "set")),
        ]),
      );
      const chosen: Fields = {
        ...fields,
        vowel: pick(["i", "u", "i,u", "e,o,a", "i,u,e,o,a"]),
        set: new URL(page.url()).searchParams.get("set") ?? fields.set!,
      };
      await go(address(file, chosen));
      const what = `${file} ${JSON.stringify(chosen)}`;
      if (file === "devoicing") {
        const shown = await printedOnPage("devoicing-rates", 4);
        expect(shown, what).toEqual(await ratesInTerminal(chosen));
        compared += shown.length;
        const command = i % 2 === 0 ? await commandOnPage("devoicing-rates") : null;
        if (command !== null) {
          expect(await ratesBy(command), command.join(" ")).toEqual(shown);
          commands++;
        }
      } else
        for (const contrast of ["vowel-length", "gemination"]) {
          const shown = await printedOnPage(`${contrast}-ratios`, 4);
          expect(shown.sort(), what).toEqual((await ratiosInTerminal(chosen, contrast)).sort());
          compared += shown.length;
          const command = i % 2 === 0 ? await commandOnPage(`${contrast}-ratios`) : null;
          if (command === null) continue;
          expect((await ratiosBy(command)).sort(), command.join(" ")).toEqual(shown);
          commands++;
        }
    }
  }
  expect(compared).toBeGreaterThan(2 * cuts);
  expect(commands).toBeGreaterThan(cuts / 5);
  expect(faults).toEqual([]);
});
