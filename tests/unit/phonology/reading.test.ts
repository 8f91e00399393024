import { beforeAll, expect, test } from "vitest";
import { makeReader, readText, type TextReading } from "../../../src/phonology/reading.ts";
import type { ReadingTokenizer } from "../../../src/phonology/readingTypes.ts";
import { loadTokenizer } from "../../../src/storage/loadTokenizer.ts";

let tokenizer: ReadingTokenizer;
let read: (text: string) => TextReading;
beforeAll(async () => {
  tokenizer = await loadTokenizer();
  read = makeReader(tokenizer);
});

test.each([
  ["駅へは母を待って行く。", "エキエワハハヲマッテイク"],
  ["子牛と格子", "コウシトコーシ"],
  ["先生が毛糸を手入れした", "センセーガケイトヲテイレシタ"],
  ["もう飲もう、でしょうか。", "モーノモー、デショーカ"],
  ["言うと言った", "ユートイッタ"],
  ["ヴァイオリンとオウムとチョウチョ", "ヴァイオリントオームトチョーチョ"],
  ["レオナルド・ダ・ヴィンチ", "レオナルド、ダ、ヴィンチ"],
  ["ﾊﾟﾝを3枚", "パンヲサンマイ"],
  ["1本と3匹と10,000円", "イッポントサンビキトイチマンエン"],
  ["2024年10月1日", "ニセンニジューヨネンジューガツツイタチ"],
  ["2.5％が三分の一", "ニーテンゴパーセントガサンブンノイチ"],
  ["何本と何百匹と数百人", "ナンボントナンビャッピキトスーヒャクニン"],
  ["何と何を", "ナントナニヲ"],
  ["3〜5人", "サンカラゴニン"],
  ["家々と人々と佐々木", "イエイエトヒトビトトササキ"],
  ["へへっと笑う。はは。", "ヘヘットワラウ、ハハ"],
  ["すごーい！ねーー", "スゴーイ、ネーー"],
  ["泳いだ後、食事の後", "オヨイダアト、ショクジノアト"],
  ["50°、気温は100%。", "ゴジュード、キオンワヒャクパーセント"],
  ["-5度", "マイナスゴド"],
  ["万年筆と一万円", "マンネンヒツトイチマンエン"],
  ["", ""],
])("readText(%s) is %s", (text, expected) => {
  const { kana, unread } = read(text);
  expect(kana).toBe(expected);
  expect(unread).toEqual([]);
});

test("readText(text) gives each word its morae without gap or overlap", () => {
  const { words, morae } = read("飲もう、3匹のｶﾞﾑを東京で買った。");
  expect(words.map((word) => word.surface).join("")).toBe("飲もう3匹のｶﾞﾑを東京で買った");
  expect(words[0]!.moraStart).toBe(0);
  for (let at = 1; at < words.length; at++) expect(words[at]!.moraStart).toBe(words[at - 1]!.moraEnd);
  expect(words.at(-1)!.moraEnd).toBe(morae.length);
});

test("readText(text) keeps the other readings of ambiguous words for the aligner", () => {
  const { words } = read("今日、上手に行った。一日");
  const alternatives = (surface: string) => words.find((word) => word.surface === surface)?.alternatives;
  expect(alternatives("今日")).toContain("コンニチ");
  expect(alternatives("上手")).toEqual(expect.arrayContaining(["ウワテ", "カミテ"]));
  expect(alternatives("行っ")).toContain("オコナッ");
  expect(alternatives("一日")).toEqual(["ツイタチ"]);
});

test("readText(text) reports Latin, unknown kanji and unclear numerals with their place and guesses none", () => {
  const text = "これはiPhoneと仔馬と1/2です";
  const { unread, words } = read(text);
  expect(unread.map((stretch) => stretch.text)).toEqual(["iPhone", "仔", "1/2"]);
  for (const { index, text: stretch } of unread)
    expect(text.slice(index, index + stretch.length)).toBe(stretch);
  expect(words.some((word) => /[A-Za-z仔/]/u.test(word.surface))).toBe(false);
});

test("readText(markup, emoji, rare letters) reports them and keeps the places right", () => {
  const text = "𠮷田<i>😀①駅";
  const { unread, words } = read(text);
  for (const { index, text: stretch } of unread)
    expect(text.slice(index, index + stretch.length)).toBe(stretch);
  expect(unread.map((stretch) => stretch.text).join("")).toBe("𠮷<>😀①");
  expect(words.at(-1)).toMatchObject({ surface: "駅", reading: "エキ" });
});

test("readText(text, {lexicon}) lets the user's words win over corrections and dictionary", () => {
  const { kana, words, unread } = readText("iPhoneで日本橋と日本の仔馬", tokenizer, {
    lexicon: [
      { surface: "iPhone", reading: "あいふぉん", accent: "3" },
      { surface: "日本", reading: "ニッポン", accent: null },
      { surface: "仔馬", reading: "コウマ", accent: null },
    ],
    corrections: [{ surface: "日本", reading: "ニホン", accent: null }],
  });
  expect(kana).toBe("アイフォンデニホンバシトニッポンノコウマ");
  expect(words[0]).toMatchObject({ surface: "iPhone", accent: "3", moraStart: 0, moraEnd: 4 });
  expect(unread).toEqual([]);
});

test("readText(text, {corrections}) keeps the other readings that a correction lists", () => {
  const { words } = readText("日本", tokenizer, {
    corrections: [{ surface: "日本", reading: "ニホン", accent: null, alternatives: ["ニッポン"] }],
  });
  expect(words[0]).toMatchObject({ reading: "ニホン", alternatives: ["ニッポン"] });
});
