import { expect, test } from "vitest";
import { readNumbers } from "../../../src/phonology/numberWords.ts";
import { pieces, readingsOf } from "./pieces.ts";

test.each([
  ["３::数 匹:ヒキ:接尾 が:ガ", "サンビキ ガ"],
  ["１::数 ，::記号 ０００::数 円:エン:接尾", "センエン"],
  ["２::数 ．::数 ５::数 ％:パーセント:接尾", "ニーテンゴパーセント"],
  ["三:サン:数 百:ヒャク:数 人:ニン:接尾", "サンビャクニン"],
  ["１０:ジュー:数 月:ツキ １:イチ:数 日:ニチ:接尾", "ジューガツ ツイタチ"],
  ["１:イチ:数 日:ニチ:接尾", "イチニチ"],
  ["三:サン:数 分:フン:接尾 の:ノ 一:イチ:数", "サンブン ノ イチ"],
  ["三:サン:数 分:フン:接尾 の:ノ 間:アイダ", "サンプン ノ アイダ"],
  ["万:マン:数 年筆:ネンヒツ", "マン ネンヒツ"],
  ["何:ナニ:数 百:ヒャク:数 本:ホン:接尾", "ナンビャッポン"],
  ["数:スー:数 千:セン:数 人:ニン:接尾", "スーセンニン"],
  ["何:ナニ:代名詞 を:オ", "ナニ オ"],
  ["１::数 ／::記号 ２::数", "?"],
  ["年:ネン:接尾", "ネン"],
])("readNumbers(%s) reads %s", (words, expected) => {
  expect(readingsOf(readNumbers(pieces(words)))).toBe(expected);
});

test("readNumbers(words) keeps numeral and counter as one word with its place", () => {
  const [, word] = readNumbers(pieces("犬:イヌ ３::数 匹:ヒキ:接尾"));
  expect(word).toMatchObject({ surface: "３匹", start: 1, end: 3, detail: "数" });
});
