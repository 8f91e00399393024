import { expect, test } from "vitest";
import { joinCounter, readCounted } from "../../../src/phonology/readCounted.ts";

const first = (whole: string, counter: string, kana: string) =>
  readCounted({ whole, fraction: "" }, counter, kana)[0];

test.each([
  ["本", "ホン", "イッポン ニホン サンボン ヨンホン ゴホン ロッポン ナナホン ハッポン キューホン ジュッポン"],
  ["匹", "ヒキ", "イッピキ ニヒキ サンビキ ヨンヒキ ゴヒキ ロッピキ ナナヒキ ハッピキ キューヒキ ジュッピキ"],
  ["分", "フン", "イップン ニフン サンプン ヨンプン ゴフン ロップン ナナフン ハップン キューフン ジュップン"],
  ["回", "カイ", "イッカイ ニカイ サンカイ ヨンカイ ゴカイ ロッカイ ナナカイ ハッカイ キューカイ ジュッカイ"],
  ["階", "カイ", "イッカイ ニカイ サンガイ ヨンカイ ゴカイ ロッカイ ナナカイ ハッカイ キューカイ ジュッカイ"],
  ["冊", "サツ", "イッサツ ニサツ サンサツ ヨンサツ ゴサツ ロクサツ ナナサツ ハッサツ キューサツ ジュッサツ"],
  ["頭", "トー", "イットー ニトー サントー ヨントー ゴトー ロクトー ナナトー ハットー キュートー ジュットー"],
  ["枚", "マイ", "イチマイ ニマイ サンマイ ヨンマイ ゴマイ ロクマイ ナナマイ ハチマイ キューマイ ジューマイ"],
  ["人", "ニン", "ヒトリ フタリ サンニン ヨニン ゴニン ロクニン シチニン ハチニン キューニン ジューニン"],
  ["日", "ニチ", "イチニチ フツカ ミッカ ヨッカ イツカ ムイカ ナノカ ヨーカ ココノカ トオカ"],
  ["時", "ジ", "イチジ ニジ サンジ ヨジ ゴジ ロクジ シチジ ハチジ クジ ジュージ"],
  ["月", "ツキ", "イチガツ ニガツ サンガツ シガツ ゴガツ ロクガツ シチガツ ハチガツ クガツ ジューガツ"],
  ["つ", "ツ", "ヒトツ フタツ ミッツ ヨッツ イツツ ムッツ ナナツ ヤッツ ココノツ"],
  [
    "キロ",
    "キロ",
    "イチキロ ニキロ サンキロ ヨンキロ ゴキロ ロッキロ ナナキロ ハチキロ キューキロ ジュッキロ",
  ],
])("readCounted(1, 2, 3 … %s) counts in the usual way", (counter, kana, expected) => {
  const counted = expected.split(" ").map((_, at) => first(`${at + 1}`, counter, kana));
  expect(counted.join(" ")).toBe(expected);
});

test.each([
  ["20", "日", "ニチ", "ハツカ"],
  ["24", "日", "ニチ", "ニジューヨッカ"],
  ["3", "日間", "ニチカン", "ミッカカン"],
  ["2", "分間", "フンカン", "ニフンカン"],
  ["3", "分の", "ブンノ", "サンブンノ"],
  ["14", "人", "ニン", "ジューヨニン"],
  ["100", "本", "ホン", "ヒャッポン"],
  ["1000", "本", "ホン", "センボン"],
  ["10000", "匹", "ヒキ", "イチマンビキ"],
  ["20", "歳", "サイ", "ハタチ"],
  ["0", "時", "ジ", "レージ"],
])("readCounted(%s%s) is %s → %s", (whole, counter, kana, expected) => {
  expect(first(whole, counter, kana)).toBe(expected);
});

test("readCounted(decimal) joins the counter to the last digit", () => {
  expect(readCounted({ whole: "2", fraction: "6" }, "キロ", "キロ")).toEqual(["ニーテンロッキロ"]);
});

test("readCounted(10 …) keeps the older ジッ as another reading", () => {
  expect(readCounted({ whole: "10", fraction: "" }, "本", "ホン")).toEqual(["ジュッポン", "ジッポン"]);
});

test("readCounted(a number without a name) is empty", () => {
  expect(readCounted({ whole: "1".repeat(25), fraction: "" }, "本", "ホン")).toEqual([]);
});

test("joinCounter(ナン, …) voices as after サン", () => {
  expect(joinCounter("ナン", "匹", "ヒキ")).toBe("ナンビキ");
  expect(joinCounter("ナン", "階", "カイ")).toBe("ナンガイ");
});
