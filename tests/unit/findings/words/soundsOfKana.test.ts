import { describe, expect, test } from "vitest";
import { soundOf } from "../../../../src/findings/words/sound.ts";
import { soundsOfKana, waysToSay } from "../../../../src/findings/words/soundsOfKana.ts";

const words = new Set(
  ["ガッコー", "センセー", "オーキー", "コウシ", "コーシ", "チーサイ"].map((kana) => soundOf(kana)!),
);
const sounds = (text: string) => soundsOfKana(text, (sound) => words.has(sound));

describe("soundsOfKana(text, isWord)", () => {
  test.each([
    ["がっこう", ["ガッコー"]],
    ["せんせい", ["センセー"]],
    ["おおきい", ["オーキー"]],
    ["ちいさい", ["チーサイ"]],
    ["こうし", ["コーシ", "コウシ"]],
    ["きく", ["キク"]],
    ["おう", ["オウ"]],
    ["菊", []],
  ])("%s sounds like %j", (text, expected) => {
    expect(sounds(text)).toEqual(expected.map((kana) => soundOf(kana)));
  });
});

describe("waysToSay(text, isWord)", () => {
  const ways = (text: string) =>
    waysToSay(text, (sound) => words.has(sound)).map(({ sound, as }) => [sound, as]);
  test("offers the long vowel first, then two vowels, and only one where kana say all", () => {
    expect(ways("がっこう")).toEqual([
      [soundOf("ガッコー"), "long"],
      [soundOf("ガッコウ"), "apart"],
    ]);
    expect(ways("きく")).toEqual([[soundOf("キク"), null]]);
    expect(ways("トーキョウ")).toEqual([[soundOf("トーキョウ"), null]]);
    expect(ways("菊")).toEqual([]);
  });
  test("takes two vowels first where only so it is a known word", () => {
    const isWord = (sound: string) => sound === soundOf("オモウ");
    expect(waysToSay("おもう", isWord).map(({ as }) => as)).toEqual(["apart", "long"]);
  });
});
