import { expect, test } from "vitest";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import { spellingsOf } from "../../../src/phonology/spellings.ts";

const spellings = (kana: string) =>
  spellingsOf(kanaToMorae(kana).morae.at(-1)!).map((phones) => phones.join(""));

test.each([
  ["カ", ["ka"]],
  ["ヴァ", ["va", "ba"]],
  ["クィ", ["kwi", "kui"]],
  ["ウィ", ["wi", "ui"]],
  ["ワ", ["wa"]],
  ["ティ", ["ti", "tyi"]],
  ["ツュ", ["tsyu", "chu", "tsu"]],
  ["ヅ", ["zu", "du"]],
  ["ケー", ["e", "i"]],
  ["コー", ["o", "u"]],
  ["カー", ["a"]],
  ["ッ", ["cl"]],
])("spellingsOf(last mora of %s) is %j, the project's own first", (kana, expected) => {
  expect(spellings(kana)).toEqual(expected);
});
