import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { toKatakana, toRomaji } from "wanakana";
import { toKatakanaLetters } from "../../../src/phonology/katakana.ts";
import { moraTable } from "../../../src/phonology/moraTable.ts";

const { names } = JSON.parse(
  readFileSync(new URL("fixtures/unicode-names.json", import.meta.url), "utf8"),
) as { names: Record<string, string> };

/** Where the syllable in a Unicode name is spelt by the kana chart and not by sound. */
const bySound: Record<string, string> = {
  SI: "shi",
  ZI: "ji",
  TI: "chi",
  DI: "ji",
  TU: "tsu",
  DU: "zu",
  HU: "fu",
  WI: "i",
  WE: "e",
  WO: "o",
};

test("moraTable says of every single katakana what its name in the Unicode Character Database says", () => {
  let checked = 0;
  for (const [kana, phones] of moraTable) {
    if ([...kana].length > 1) continue;
    const syllable = /^KATAKANA LETTER (?:SMALL )?(\w+)$/u.exec(names[kana]!)![1]!;
    expect(phones.join(""), kana).toBe(bySound[syllable] ?? syllable.toLowerCase());
    checked += 1;
  }
  const letters = Object.values(names).filter((name) => /^KATAKANA LETTER/u.test(name));
  expect(checked).toBe(letters.length - ["ッ", "ン"].length);
});

test("moraTable agrees with wanakana, from kana to romaji or back, for all but the named kana", () => {
  const differing = [...moraTable].filter(([kana, phones]) => {
    const romaji = phones.join("");
    return toRomaji(kana) !== romaji && toKatakana(romaji) !== kana;
  });
  const named = [
    // wanakana writes by letter what is spoken i, e, o since the old wi, we, wo fell together.
    ..."ヰヱヲ",
    // Not in wanakana, or the romaji of another kana: ティ is its `thi`, for `ti` is チ.
    ..."スィ ズィ ティ トゥ ディ ドゥ テャ テュ テェ テョ デャ デュ デェ デョ ツャ ツュ ツョ".split(" "),
    ..."ヅァ ヅィ ヅェ ヅォ ホゥ ウゥ ウォ ウァ クヮ グヮ ヷ ヸ ヹ ヺ ヮ ヵ ヶ".split(" "),
  ];
  expect(differing.map(([kana]) => kana).filter((kana) => !named.includes(kana))).toEqual([]);
  expect(moraTable.size - differing.length).toBeGreaterThan(150);
});

test("toKatakanaLetters(hiragana) agrees with wanakana.toKatakana letter by letter", () => {
  for (let code = 0x3041; code <= 0x3094; code++) {
    const hiragana = String.fromCodePoint(code);
    expect(toKatakanaLetters(hiragana).map((letter) => letter.text)).toEqual([toKatakana(hiragana)]);
  }
});
