import { expect, test } from "vitest";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import type { ReadWord } from "../../../src/phonology/reading.ts";
import { wordOfMora } from "../../../src/phonology/words.ts";

const word = (surface: string, reading: string, ...alternatives: string[]): ReadWord => ({
  surface,
  reading,
  alternatives,
  moraStart: 0,
  moraEnd: 0,
  partOfSpeech: "名詞",
  accent: null,
});
const morae = (kana: string) => kanaToMorae(kana).morae;

test("wordOfMora(words, the same reading) gives each mora its word", () => {
  expect(wordOfMora([word("駅", "エキ"), word("へ", "エ")], morae("エキエ"))).toEqual(["駅", "駅", "へ"]);
});

test("wordOfMora(words, reading) takes the alternative that the dataset spells, pauses apart", () => {
  const words = [word("今日", "キョー", "コンニチ"), word("の", "ノ")];
  expect(wordOfMora(words, morae("コンニチ、ノ"))).toEqual(["今日", "今日", "今日", "今日", "の"]);
});

test("wordOfMora(words, reading) goes back when an alternative leaves the next word no room", () => {
  const words = [word("甲", "ア", "アイ"), word("乙", "イウ")];
  expect(wordOfMora(words, morae("アイウ"))).toEqual(["甲", "乙", "乙"]);
});

test("wordOfMora counts センセイ and センセー as one, and lengthens over a word's edge", () => {
  expect(wordOfMora([word("先生", "センセー")], morae("センセイ"))).toHaveLength(4);
  expect(wordOfMora([word("飲も", "ノモ"), word("う", "ー")], morae("ノモー"))).toEqual([
    "飲も",
    "飲も",
    "う",
  ]);
});

test("wordOfMora(words, another reading) is null", () => {
  expect(wordOfMora([word("駅", "エキ")], morae("エキガ"))).toBeNull();
  expect(wordOfMora([word("駅", "エキ"), word("が", "ガ")], morae("エキ"))).toBeNull();
  expect(wordOfMora([], morae("ア"))).toBeNull();
});
