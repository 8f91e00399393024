import { expect, test } from "vitest";
import { kanaToMorae } from "../../../src/phonology/kana.ts";

const phonesOf = (kana: string) =>
  kanaToMorae(kana)
    .morae.map((mora) => mora.phones.join(""))
    .join(" ");

test.each([
  ["ティーシャツ", "ti i sha tsu"],
  ["トゥデュファシェチェウィツァクァ", "tu dyu fa she che wi tsa kwa"],
  ["ヴァイオリン", "va i o ri N"],
  ["ガッコー", "ga cl ko o"],
  ["ヲヂヅ", "o ji zu"],
  ["きゃりーぱみゅぱみゅ", "kya ri i pa myu pa myu"],
  ["ｶﾞｯｺｳ ﾊﾟﾝ", "ga cl ko u pa N"],
  ["か゛き", "ga ki"],
  ["こゝろ、いすゞ、バナヽ", "ko ko ro i su zu ba na na"],
  ["づゝ", "zu tsu"],
  ["ンートネ", "N N to ne"],
])("kanaToMorae(%s) gives the phones %s", (kana, expected) => {
  expect(phonesOf(kana)).toBe(expected);
  expect(kanaToMorae(kana).unknown).toEqual([]);
});

test("kanaToMorae(kana) makes a long mora of ー and of a small vowel after the same vowel, not of オウ", () => {
  const kinds = (kana: string) => kanaToMorae(kana).morae.map((mora) => mora.kind);
  expect(kinds("トーキョー")).toEqual(["cv", "long", "cv", "long"]);
  expect(kinds("ねぇ")).toEqual(["cv", "long"]);
  expect(kinds("オウエィ")).toEqual(["cv", "cv", "cv", "cv"]);
  expect(kinds("サンカッタ")).toEqual(["cv", "nasal", "cv", "geminate", "cv"]);
});

test("kanaToMorae(kana) turns separators into breaks after the mora before them", () => {
  const breaks = kanaToMorae("、ア、イ　ウ・エ！オ？カ。キ").morae.map((mora) => mora.breakAfter);
  expect(breaks).toEqual([true, true, true, true, true, true, false]);
});

test("kanaToMorae(kana) lists what is not kana with its place in the text as given", () => {
  const { morae, unknown } = kanaToMorae("ﾊﾞABと漢字ト");
  expect(morae.map((mora) => mora.kana)).toEqual(["バ", "ト", "ト"]);
  expect(unknown).toEqual([
    { index: 2, text: "AB" },
    { index: 5, text: "漢字" },
  ]);
});

test("kanaToMorae(kana) reports a ー that has no vowel to lengthen", () => {
  expect(kanaToMorae("ーア").unknown).toEqual([{ index: 0, text: "ー" }]);
  expect(kanaToMorae("アッー").unknown).toEqual([{ index: 2, text: "ー" }]);
});

test("kanaToMorae('') is empty", () => {
  expect(kanaToMorae("")).toEqual({ morae: [], unknown: [] });
});
