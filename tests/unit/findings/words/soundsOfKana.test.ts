import { describe, expect, test } from "vitest";
import { soundOf } from "../../../../src/findings/words/sound.ts";
import { soundsOfKana } from "../../../../src/findings/words/soundsOfKana.ts";

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
