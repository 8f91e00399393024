import { expect, test } from "vitest";
import { lengthenEi } from "../../../src/phonology/lengthenEi.ts";
import type { ReadingToken, ReadingTokenizer } from "../../../src/phonology/readingTypes.ts";

const token = (surface: string, reading: string, pos = "名詞"): ReadingToken => ({
  surface_form: surface,
  reading,
  pronunciation: reading,
  pos,
  pos_detail_1: "一般",
  pos_detail_2: "*",
  basic_form: surface,
});
const words = [token("毛", "ケ"), token("糸", "イト"), token("家", "イエ"), token("生", "セイ")];
const dictionary: ReadingTokenizer = {
  tokenize: () => [],
  entries: (surface) => words.filter((entry) => entry.surface_form === surface),
};

test.each([
  ["先生", "センセイ", "名詞", "センセー"],
  ["きれい", "キレイ", "名詞", "キレー"],
  ["毛糸", "ケイト", "名詞", "ケイト"],
  ["家々", "イエイエ", "名詞", "イエイエ"],
  ["招い", "マネイ", "動詞", "マネイ"],
  ["まねい", "マネイ", "動詞", "マネイ"],
  ["メイン", "メイン", "名詞", "メイン"],
])("lengthenEi(%s %s, %s) is %s", (surface, reading, pos, expected) => {
  expect(lengthenEi(reading, token(surface, reading, pos), dictionary)).toBe(expected);
});
