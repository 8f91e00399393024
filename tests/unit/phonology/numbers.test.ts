import { expect, test } from "vitest";
import { kanjiToDigits, readDecimal, readDigits, readInteger } from "../../../src/phonology/numbers.ts";

test.each([
  ["0", "ゼロ"],
  ["10", "ジュー"],
  ["14", "ジューヨン"],
  ["300", "サンビャク"],
  ["365", "サンビャクロクジューゴ"],
  ["600", "ロッピャク"],
  ["888", "ハッピャクハチジューハチ"],
  ["1000", "セン"],
  ["3001", "サンゼンイチ"],
  ["8000", "ハッセン"],
  ["10000", "イチマン"],
  ["10000000", "イッセンマン"],
  ["100000000", "イチオク"],
  ["1000000000000", "イッチョー"],
  ["10000000000000", "ジュッチョー"],
  ["20240000", "ニセンニジューヨンマン"],
  ["007", "ゼロゼロナナ"],
])("readInteger(%s) is %s", (digits, expected) => {
  expect(readInteger(digits)).toBe(expected);
});

test("readInteger(21 digits) is null: there is no name for it here", () => {
  expect(readInteger("1".repeat(21))).toBeNull();
});

test.each([
  ["3", "25", "サンテンニーゴー"],
  ["1", "5", "イッテンゴ"],
  ["0", "5", "レーテンゴ"],
  ["2", "5", "ニーテンゴ"],
  ["5", "2", "ゴーテンニ"],
  ["10", "0", "ジュッテンゼロ"],
  ["8", "3", "ハッテンサン"],
])("readDecimal(%s.%s) is %s", (whole, fraction, expected) => {
  expect(readDecimal(whole, fraction)).toBe(expected);
});

test("readDigits(digits) reads one by one with long ニー and ゴー", () => {
  expect(readDigits("0259")).toBe("ゼロニーゴーキュー");
});

test.each([
  ["三百六十五", "365"],
  ["二〇二四", "2024"],
  ["十", "10"],
  ["3万5千", "35000"],
  ["1億2000万", "120000000"],
  ["万", "10000"],
  ["二千二十四", "2024"],
])("kanjiToDigits(%s) is %s", (kanji, expected) => {
  expect(kanjiToDigits(kanji)).toBe(expected);
});

test("kanjiToDigits(other text) is null", () => {
  expect(kanjiToDigits("三本")).toBeNull();
});

test("kanjiToDigits and readInteger meet: the same number reads the same in digits and kanji", () => {
  expect(readInteger(kanjiToDigits("八千六百")!)).toBe(readInteger("8600"));
});
