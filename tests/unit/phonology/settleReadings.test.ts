import { expect, test } from "vitest";
import { settleReadings } from "../../../src/phonology/settleReadings.ts";
import { pieces, readingsOf } from "./pieces.ts";

test.each([
  ["飲も:ノモ う:ウ:*:助動詞", "ノモ ー"],
  ["食べ:タベ う:ウ:*:助動詞", "タベ ウ"],
  ["５:ゴ:数 ～: ６人:ロクニン:数", "ゴ カラ ロクニン"],
  ["－: ５度:ゴド:数", "マイナス ゴド"],
  ["品:シナ －: ５:ゴ:数", "シナ 、 ゴ"],
  ["時:トキ 々:", "トキ トキ"],
  ["は:ワ:係助詞:助詞 は:ワ:係助詞:助詞", "ハ ハ"],
  ["母:ハハ は:ワ:係助詞:助詞", "ハハ ワ"],
  ["、: へ:エ:格助詞:助詞", "、 ヘ"],
  ["何:ナニ:代名詞 と:ト", "ナン ト"],
  ["何:ナニ:代名詞 が:ガ", "ナニ ガ"],
  ["た:タ:*:助動詞 後:ノチ/アト", "タ アト"],
  ["その:ソノ 後:ノチ/アト", "ソノ ノチ"],
  ["、: ー:ー", "、 、"],
  ["あ:ア ー:ー", "ア ー"],
])("settleReadings(%s) reads %s", (words, expected) => {
  expect(readingsOf(settleReadings(pieces(words)))).toBe(expected);
});

test("settleReadings(々) keeps the voiced form as another reading", () => {
  expect(settleReadings(pieces("時:トキ 々:"))[1]!.readings).toEqual(["トキ", "ドキ"]);
});
