import { expect, test } from "vitest";
import { hiraganaToKatakana, toKatakanaLetters } from "../../../src/phonology/katakana.ts";

const joined = (text: string) =>
  toKatakanaLetters(text)
    .map((letter) => letter.text)
    .join("");

test.each([
  ["ｶﾞｷﾞｸﾞ", "ガギグ"],
  ["か゛は゜", "ガパ"],
  ["か\u3099", "ガ"],
  ["ゔぃ", "ヴィ"],
  ["こゝろ", "ココロ"],
  ["すゞめ", "スズメ"],
  ["じゝ", "ジシ"],
  ["ヽ", "ヽ"],
  ["漢字A", "漢字A"],
])("toKatakanaLetters(%s) is %s", (text, expected) => {
  expect(joined(text)).toBe(expected);
});

test("toKatakanaLetters(text) keeps the place of each letter in the original", () => {
  expect(toKatakanaLetters("ｶﾞ𠮷い").map((letter) => letter.index)).toEqual([0, 2, 4]);
});

test("toKatakanaLetters leaves numbers in circles alone, which would join the digits beside them", () => {
  expect(joined("①②")).toBe("①②");
});

test("hiraganaToKatakana(text) changes hiragana only", () => {
  expect(hiraganaToKatakana("あゖゝカ漢")).toBe("アヶヽカ漢");
});
