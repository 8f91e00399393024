import { expect, test } from "vitest";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import { moraeToKana, toRomaji } from "../../../src/phonology/romaji.ts";

test.each([
  ["トーキョー", "tōkyō"],
  ["マッチャ", "matcha"],
  ["ザッシ", "zasshi"],
  ["キンエン", "kin'en"],
  ["サンポ", "sanpo"],
  ["エッ、ウソ", "e' uso"],
  ["ティッシュ", "tisshu"],
  ["オオイ", "ooi"],
])("toRomaji(%s) is %s", (kana, expected) => {
  expect(toRomaji(kanaToMorae(kana).morae)).toBe(expected);
});

test("moraeToKana(kanaToMorae(k)) gives katakana back with its pauses", () => {
  expect(moraeToKana(kanaToMorae("きっと、ティーでしょう。").morae)).toBe("キット、ティーデショウ");
});
