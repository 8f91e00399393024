import { describe, expect, test } from "vitest";
import { environmentsSentence } from "../../../../src/findings/sentences/environments.ts";
import type { DifferenceOf } from "../../../../src/findings/sentences/judgeExtremes.ts";
import { rateRow, ruleRow } from "../rows.ts";

const at = (before: string, after: string, estimate: number, halfWidth = 0.05) => ({
  before,
  after,
  row: rateRow({ estimate, low: estimate - halfWidth, high: estimate + halfWidth }),
});

const spaces = (text: string) => text.replaceAll("\u00a0", " ");

describe("environmentsSentence", () => {
  test("names the extremes among surroundings with narrow intervals, judged by an interval wide enough for any two", () => {
    const cells = [at("sh", "t", 0.92), at("s", "t", 0.6), at("k", "s", 0.4), at("p", "p", 0.02, 0.4)];
    const levels: number[] = [];
    const by =
      (low: number): DifferenceOf =>
      (a, b, level) => {
        levels.push(level);
        return { difference: a.estimate! - b.estimate!, low, high: 0.8 };
      };
    expect(spaces(environmentsSentence(cells, by(0.2)))).toMatch(
      /more frequent between ɕ \(sh\) and t \(92 %\) than between k and s \(40 %\), the highest and the lowest here, a difference of 52 points \(95 % interval 20 to 80, /,
    );
    expect(levels[0]).toBeCloseTo(1 - 0.05 / 3, 12);
    expect(spaces(environmentsSentence(cells, by(-0.01)))).toMatch(
      /ranges from k and s \(40 %\) to ɕ \(sh\) and t \(92 %\), .* −1 to 80, .*order is not certain\.$/,
    );
  });

  test("leaves the order open where the difference is not known, however far the intervals lie apart", () => {
    expect(environmentsSentence([at("sh", "t", 0.92), at("k", "s", 0.4)])).toContain("order is not certain");
  });

  test("leaves voiced surroundings out of the ranking", () => {
    expect(
      environmentsSentence([at("k", "t", 0.9), at("s", "t", 0.6), at("k", "voiced", 0.0)]),
    ).not.toContain("voiced sound");
  });

  test("says so where no interval is narrow enough", () => {
    expect(environmentsSentence([at("k", "t", 0.6, 0.3), at("s", "t", 0.2, 0.3)])).toContain(
      "too wide to rank",
    );
  });

  test("of predicted marks speaks of the rule, and of nothing says that there is nothing", () => {
    expect(environmentsSentence([{ before: "k", after: "t", row: ruleRow() }])).toContain(
      "predicted by rule, not heard",
    );
    expect(environmentsSentence([])).toContain("No vowel");
  });
});
