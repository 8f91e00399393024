import { describe, expect, test } from "vitest";
import { kanaOf, soundName, soundOption } from "../../../src/findings/soundNames.ts";
import { phones } from "../../../src/phonology/phones.ts";

describe("names of sounds", () => {
  test("soundName gives IPA, with the letter beside it only where it looks different", () => {
    expect(["i", "u", "sh", "g", "cl", "pause"].map(soundName)).toEqual([
      "i",
      "ɯ (u)",
      "ɕ (sh)",
      "ɡ",
      "ッ",
      "pause",
    ]);
  });

  test("soundOption has letter, IPA and a kana", () => {
    expect([soundOption("ch"), soundOption("k")]).toEqual(["ch · tɕ · チ", "k · カ"]);
  });

  test("kanaOf is katakana for every phone that has one", () => {
    for (const phone of phones) expect(kanaOf(phone)).toMatch(/^[\p{Script=Katakana}]{0,2}$/u);
  });
});
