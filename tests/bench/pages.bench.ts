import { loadavg } from "node:os";
import { sitePages } from "../../src/publish/siteConfig.ts";
import { type InventedResults, largeResults, smallResults } from "../pages/fixtures/writeResults.ts";
import { type OpenSite, openSite } from "../pages/openSite.ts";

// Opens every page of two invented reports in Chromium, a small one and one with 50 speakers and a million tokens, and
// prints how long the site took to build and how large it is, how long it takes until a page stands (its pictures, where
// it draws any), what is transferred without audio, and the script time of each redraw after a choice.
// Goals: start page within 1 s and 1.5 MB; with a million tokens any page within 2 s and 6 MB; redraw under 100 ms;
// a small site built within 15 s, one of a million tokens within 60 s and 1 GB.

const redraws = 12;
const drawn = ["devoicing", "length"];
const changes = {
  devoicing: [
    { name: "before", values: ["s", "k", "voiceless", "any"] },
    { name: "after", values: ["t", "voiceless", "pause"] },
    { name: "position", values: ["medial", "any"] },
    { name: "by", values: ["after", "position", "phone"] },
  ],
  length: [
    { name: "position", values: ["medial", "final", "any"] },
    { name: "surroundings", values: ["all", "consonants"] },
    { name: "by", values: ["position", "after", "phone"] },
  ],
} as const;

const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(2)} MB`;

/** Time until a page stands in a fresh browser profile, and the bytes that its host sent. */
async function visit(open: OpenSite, file: string): Promise<void> {
  const context = await open.browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  let bytes = 0;
  await session.send("Network.enable");
  session.on("Network.loadingFinished", ({ encodedDataLength }) => {
    bytes += encodedDataLength;
  });
  const start = performance.now();
  await page.goto(`${open.url}${file === "index" ? "" : file}`);
  await page.waitForSelector(drawn.includes(file) ? ".figure svg" : "footer");
  const readyMs = performance.now() - start;
  await page.waitForLoadState("networkidle");
  console.log(`  ${file}: stands after ${readyMs.toFixed(0)} ms, ${megabytes(bytes)}`);
  const fields = changes[file as keyof typeof changes];
  if (fields === undefined) return context.close();
  for (let i = 0; i < redraws; i++) {
    const field = fields[i % fields.length]!;
    const value = field.values[Math.floor(i / fields.length) % field.values.length]!;
    await page.selectOption(`select[name=${field.name}]`, value);
    await page.waitForFunction(() => document.querySelector("[data-waiting]") === null);
  }
  const durations = (name: string) =>
    page.evaluate((name) => performance.getEntriesByName(name).map((entry) => entry.duration), name);
  const times = await durations("redraw");
  const rest = (await durations("redraw-out-of-sight")).reduce((sum, time) => sum + time, 0) / times.length;
  console.log(
    `    ${times.length} redraws, median ${median(times).toFixed(0)} ms, longest ${Math.max(...times).toFixed(0)} ms, and ${rest.toFixed(0)} ms on average for pictures out of sight`,
  );
  await context.close();
}

async function look(name: string, invented: InventedResults): Promise<void> {
  const open = await openSite(invented);
  const { ms, bytes, pages } = open.built;
  console.log(`${name}: ${pages} pages built in ${(ms / 1000).toFixed(1)} s, ${megabytes(bytes)}`);
  for (const { file } of sitePages) await visit(open, file);
  await open.close();
}

const load = () => loadavg()[0]!.toFixed(1);
console.log(`load average of the machine: ${load()}`);
await look("small", smallResults);
await look("a million tokens, 50 speakers", largeResults);
console.log(`load average of the machine: ${load()}`);
