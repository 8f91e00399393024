import { expect, test } from "vitest";
import { judgeExtremes } from "../../../../src/findings/sentences/judgeExtremes.ts";
import { rateRow } from "../rows.ts";

const judged = (low: number, high: number, difference = 0.02) =>
  judgeExtremes(rateRow(), rateRow(), 2, () => ({ difference, low, high }))!;

test.each([
  ["whole points", 0.1, 0.5, "10 to 50", true],
  ["one decimal where a bound would be 0", 0.004, 0.5, "0.4 to 50.0", true],
  ["the same below 0", -0.002, 0.5, "−0.2 to 50.0", false],
  ["the upper bound alike", -0.2, 0.003, "−20.0 to 0.3", false],
  ["no sign on a zero, and no sure order by it", -0.0001, 0.5, "0 to 50.0", false],
  ["no sure order by a bound that prints as 0", 0.0004, 0.5, "0 to 50.0", false],
  ["zero itself", 0, 0.5, "0 to 50", false],
])("judgeExtremes prints %s", (_, low, high, bounds, sure) => {
  const found = judged(low, high);
  expect(found.difference.replaceAll("\u00a0", " ")).toContain(`(95 % interval ${bounds})`);
  expect(found.sure).toBe(sure);
});

test("judgeExtremes asks for the level that holds for every pair, and knows nothing without a difference", () => {
  const levels: number[] = [];
  const ask = (ranked: number) =>
    judgeExtremes(rateRow(), rateRow(), ranked, (_a, _b, level) => {
      levels.push(level);
      return null;
    });
  expect([ask(2), ask(5)]).toEqual([null, null]);
  expect(levels[0]).toBeCloseTo(0.95, 12);
  expect(levels[1]).toBeCloseTo(1 - 0.05 / 10, 12);
});
