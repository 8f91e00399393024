import { largeResults } from "../pages/fixtures/writeResults.ts";
import { openSite } from "../pages/openSite.ts";

// Opens the two interactive pages of a report with 50 invented speakers in Chromium and prints how long it takes until
// the first picture stands, what is transferred, and the script time of each redraw after a choice (goal: under 100 ms).

const redraws = 12;
const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

const started = performance.now();
const open = await openSite(largeResults);
console.log(`results and report made in ${((performance.now() - started) / 1000).toFixed(1)} s`);

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

for (const [file, fields] of Object.entries(changes)) {
  const page = await open.browser.newPage({ viewport: { width: 1280, height: 900 } });
  let bytes = 0;
  page.on("response", async (response) => {
    bytes += (await response.body().catch(() => Buffer.alloc(0))).length;
  });
  const start = performance.now();
  await page.goto(open.url + file);
  await page.waitForSelector(".figure svg");
  const readyMs = performance.now() - start;
  await page.waitForLoadState("networkidle");
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
    `${file}: first picture after ${readyMs.toFixed(0)} ms, ${(bytes / 1e6).toFixed(2)} MB; ${times.length} redraws, median ${median(times).toFixed(0)} ms, longest ${Math.max(...times).toFixed(0)} ms, and ${rest.toFixed(0)} ms on average for pictures out of sight`,
  );
  await page.close();
}
await open.close();
