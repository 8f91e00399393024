import { expect, test } from "vitest";
import { phonesDifferFromReading } from "../../../src/messages/phonology.ts";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import { firstDifference, type LabelPhone, matchPhonesToMorae } from "../../../src/phonology/matchPhones.ts";
import { normalisePhone } from "../../../src/phonology/phones.ts";

const labels = (text: string): LabelPhone[] => text.split(" ").map((label) => normalisePhone(label)!);
const morae = (kana: string) => kanaToMorae(kana).morae;

test.each([
  ["g a cl k o o", "ガッコー", [0, 0, 1, 2, 2, 3]],
  ["g a q k o:", "ガッコー", [0, 0, 1, 2, 2]],
  ["o: i", "オオイ", [0, 2]],
  ["k I ts u", "キツ", [0, 0, 1, 1]],
  ["p a: t i:", "パーティー", [0, 0, 2, 2]],
  ["p a a ty i i", "パーティー", [0, 0, 1, 2, 2, 3]],
  ["d u ts u", "ヅツ", [0, 0, 1, 1]],
  ["h a n a j i", "ハナヂ", [0, 0, 1, 1, 2, 2]],
] as const)("matchPhonesToMorae(%s, %s) gives the mora of each label", (text, kana, expected) => {
  expect(matchPhonesToMorae(labels(text), morae(kana))).toEqual(expected);
});

test.each([
  ["k a k i", "カケ", { index: 3, expected: "e", found: "i", mora: 1 }],
  ["k a", "カケ", { index: 2, expected: "k", found: null, mora: 1 }],
  ["k a k e k", "カケ", { index: 4, expected: null, found: "k", mora: null }],
  ["k a:", "カケ", { index: 2, expected: "k", found: "a", mora: 1 }],
  ["d u", "ズ", { index: 0, expected: "z", found: "d", mora: 0 }],
] as const)(
  "firstDifference(%s, %s) points at the first label that leaves the reading",
  (text, kana, expected) => {
    expect(matchPhonesToMorae(labels(text), morae(kana))).toBeNull();
    expect(firstDifference(labels(text), morae(kana))).toEqual(expected);
  },
);

test("firstDifference(equal) is null", () => {
  expect(firstDifference(labels("k a"), morae("カ"))).toBeNull();
});

test("phonesDifferFromReading(…) names position, mora, expected and found", () => {
  expect(phonesDifferFromReading(4, "e", "i", "ケ")).toMatch(/phone 4 is i.*mora ケ.*e was expected/u);
  expect(phonesDifferFromReading(3, "k", null, "ケ")).toMatch(/end after 2 phones.*k should follow/u);
  expect(phonesDifferFromReading(5, null, "k", null)).toMatch(/phone 5 is k.*more than the reading/u);
});
