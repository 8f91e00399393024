import { expect, test } from "vitest";
import type { Timing } from "../../../src/estimates/explain/explainTiming.ts";
import type { MoraTiming } from "../../../src/estimates/timing/moraTiming.ts";
import { timingFindingHtml } from "../../../src/publish/timingFinding.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";
import { sampleRun } from "./sampleRun.ts";

const mean = (estimate: number, low: number | null, high: number | null, speakers = 8) => ({
  ...{ estimate, low, high, speakers },
});
const line = (msPerMora: ReturnType<typeof mean>): MoraTiming =>
  ({ unit: "word", msPerMora, rSquared: mean(0.81, 0.7, 0.9) }) as unknown as MoraTiming;
const timing = (found: MoraTiming | null): Timing =>
  ({
    ...{ dataset: "d", labelSet: "l", level: 0.95, basis: "aligned" },
    words: { found, reason: found === null ? "too few words" : null },
    phrases: { found: null, reason: "too few" },
  }) as unknown as Timing;
const run = sampleRun([inventCard({ id: "d", name: "D" }, { id: "l" })]);
const plain = (markup: string) => markup.replaceAll("\u00a0", " ");

test("timingFindingHtml says what a mora adds, with its interval in words and in the picture", () => {
  const { markup } = timingFindingHtml(run, [timing(line(mean(127, 112, 142)))])!;
  expect(plain(markup)).toContain("adds 127 ms to a word (95 % interval 112 to 142 ms; 8 speakers)");
  expect(markup.match(/class="whisker"/g)).toHaveLength(1);
  expect(markup).toContain("Times placed by an aligner.");
  expect(markup).toContain('href="/timing"');
});

test("timingFindingHtml of one speaker draws no interval and says that nothing follows about others", () => {
  const { markup } = timingFindingHtml(run, [timing(line(mean(127, null, null, 1)))])!;
  expect(markup).toContain("nothing follows about other speakers");
  expect(markup).not.toContain("<svg");
});

test("timingFindingHtml is nothing where no label set can tell", () => {
  expect(timingFindingHtml(run, [timing(null)])).toBe(null);
  expect(timingFindingHtml(run, [])).toBe(null);
});
