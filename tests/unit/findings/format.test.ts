import { describe, expect, test } from "vitest";
import {
  capital,
  formatAmount,
  formatDecimals,
  formatMs,
  formatPercent,
  formatRatio,
  intervalName,
  joinWords,
  percentRange,
  roundPercent,
} from "../../../src/findings/format.ts";

/** A number and its unit must not be parted: a no-break space, U+00A0. */
const nb = "\u00a0";

describe("numbers in words", () => {
  test("formatPercent(share) gives per cent with one decimal place", () => {
    expect([0, 0.8731, 1].map(formatPercent)).toEqual([`0.0${nb}%`, `87.3${nb}%`, `100.0${nb}%`]);
  });

  test("formatDecimals(value, digits) has a minus sign, and none on what rounds to 0", () => {
    expect([-42.25, -0.04, 0, 0.04, 3].map((value) => formatDecimals(value, 1))).toEqual([
      ...["−42.3", "0.0", "0.0", "0.0", "3.0"],
    ]);
    expect(formatDecimals(-0.4, 0)).toBe("0");
  });

  test("roundPercent(share) never rounds some to none, or most to all", () => {
    expect([0, 0.001, 0.004999, 0.005].map(roundPercent)).toEqual([
      `0${nb}%`,
      `less than 0.5${nb}%`,
      `less than 0.5${nb}%`,
      `1${nb}%`,
    ]);
    expect([0.996, 1].map(roundPercent)).toEqual([`more than 99.5${nb}%`, `100${nb}%`]);
  });

  test("percentRange(low, high) names the unit once where both bounds are plain numbers", () => {
    expect(percentRange(0.77, 0.86)).toBe(`77 to 86${nb}%`);
    expect(percentRange(0.001, 0.04)).toBe(`less than 0.5${nb}% to 4${nb}%`);
    expect(percentRange(0.5, 1)).toBe(`50 to 100${nb}%`);
  });

  test("formatRatio, formatMs and intervalName keep to their number of digits", () => {
    expect([formatRatio(2.4), formatMs(61.6), intervalName(0.95)]).toEqual([
      "2.40",
      `62${nb}ms`,
      `95${nb}% interval`,
    ]);
  });

  test("formatAmount(n, one) agrees with the number and groups thousands", () => {
    expect([
      formatAmount(1, "vowel"),
      formatAmount(12345, "vowel"),
      formatAmount(2, "mora", "morae"),
    ]).toEqual(["1 vowel", "12,345 vowels", "2 morae"]);
  });

  test("joinWords joins as a sentence does, and capital begins one", () => {
    expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map((words) => joinWords(words))).toEqual([
      "",
      "a",
      "a and b",
      "a, b and c",
    ]);
    expect([capital("long vowels"), capital("")]).toEqual(["Long vowels", ""]);
  });
});
