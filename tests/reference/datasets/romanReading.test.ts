import { expect, test } from "vitest";
import { toKatakana, toRomaji } from "wanakana";
import { romanReading } from "../../../src/datasets/romanReading.ts";

// Romanisation of each mora by wanakana 5, a general kana library; ヂ and ヅ are left out because they are spelt as ジ and ズ.
const morae = [
  ..."アイウエオカキクケコガギグゲゴサシスセソザジズゼゾタチツテトダデドナニヌネノハヒフヘホバビブベボパピプペポマミムメモヤユヨラリルレロワ",
  ...[
    "キャ",
    "キュ",
    "キョ",
    "ギャ",
    "シャ",
    "シュ",
    "ショ",
    "ジャ",
    "ジュ",
    "ジョ",
    "チャ",
    "チュ",
    "チョ",
    "ニャ",
    "ヒュ",
    "ビョ",
    "ピャ",
    "ミョ",
    "リャ",
    "リュ",
  ],
];

// Loan sounds, for which wanakana writes spellings of its own, are held against its other direction.
const loans = ["fa", "fi", "fe", "fo", "va", "vi", "ve", "vo", "tsa", "tse", "tso", "she", "je", "che", "ye"];

test("romanReading of wanakana's romanisation is the kana itself for every mora", () => {
  const wrong = morae
    .filter((mora) => romanReading(toRomaji(mora)) !== mora)
    .map((mora) => `${mora} ${toRomaji(mora)} ${romanReading(toRomaji(mora))}`);
  expect(morae.length).toBe(87);
  expect(wrong).toEqual([]);
});

test.each(loans)("romanReading(%s) is what wanakana makes of it", (roman) => {
  expect(romanReading(roman)).toBe(toKatakana(roman));
});

test.each([
  "ガッコウ",
  "キップ",
  "ニッポン",
  "ザッシ",
  "マッチャ",
  "コンバン",
  "シンヨウ",
  "テンイン",
  "ハンノウ",
  "ミズウミ",
])("romanReading reads %s back from wanakana", (word) => {
  expect(romanReading(toRomaji(word))).toBe(word);
});

test.each([
  ["k o N d o m o a r u i w a s o: n a r u", "コンドモアルイワソーナル"],
  ["o m o q t a . sh i k a sh i", "オモッタ、シカシ"],
  ["k i cl t e", "キッテ"],
  ["tōkyō e iku", "トーキョー エ イク"],
])("romanReading(%s) is %s", (roman, kana) => {
  expect(romanReading(roman)).toBe(kana);
});

test.each(["the cat", "xyz", "", "日本", "k k k"])("romanReading(%j) is none", (roman) => {
  expect(romanReading(roman)).toBeNull();
});
