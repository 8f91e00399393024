import { expect, test } from "vitest";
import { agreement, vowelsOfLabels, vowelsOfReading } from "../../../src/datasets/vowelAgreement.ts";

test.each([
  ["シュヴァイツァーワ", "uaiaaa"],
  ["キッテ、ト", "ieo"],
  ["ンー", ""],
  ["ファーストフード", "aauouuo"],
  ["ティ キャ", "ia"],
  ["ァ", "a"],
])("vowelsOfReading(%s) is %s", (reading, vowels) => {
  expect(vowelsOfReading(reading)).toBe(vowels);
});

test("vowelsOfLabels takes devoiced and long vowels and leaves consonants, pauses and N out", () => {
  expect(vowelsOfLabels(["sil", "k", "I", "sh", "a:", "N", "cl", "U", "pau"])).toBe("iaau");
});

test("agreement is one minus the edit distance over the longer length", () => {
  expect(agreement("kitten", "sitting")).toBeCloseTo(1 - 3 / 7, 12);
  expect(agreement("aiu", "aiu")).toBe(1);
  expect(agreement("aaa", "ooo")).toBe(0);
  expect(agreement("", "a")).toBe(0);
});
