import { expect, test } from "vitest";
import { isDevoiceable, position } from "../../../src/phonology/environment.ts";

test.each([
  ["k", "i", "t", true],
  ["sh", "i", "cl", true],
  ["s", "u", "pause", true],
  ["k", "i", "g", false],
  ["k", "a", "t", false],
  ["pause", "i", "t", false],
  ["m", "i", "t", false],
  ["k", "i", "N", false],
  ["k", "i", "a", false],
] as const)("isDevoiceable(%s, %s, %s) is %s", (before, vowel, after, expected) => {
  expect(isDevoiceable(before, vowel, after)).toBe(expected);
});

test("position(i, n) has one initial and one final mora unless there is only one", () => {
  expect([0, 1, 2, 3].map((index) => position(index, 4))).toEqual(["initial", "medial", "medial", "final"]);
  expect(position(0, 1)).toBe("only");
});
