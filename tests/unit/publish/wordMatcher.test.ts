import { describe, expect, test } from "vitest";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import { placesOf, wantedWord } from "../../../src/publish/wordMatcher.ts";

const places = (typed: string, reading: string) =>
  placesOf(wantedWord(typed)!.morae!, kanaToMorae(reading).morae);

describe("wantedWord", () => {
  test.each(["kiku", "きく", "キク", "ｷｸ", " kiku "])("takes %s for the sounds of キク", (typed) => {
    expect(wantedWord(typed)!.morae!.map(({ kana }) => kana)).toEqual(["キ", "ク"]);
  });

  test("keeps text with kanji as text, and nothing for nothing", () => {
    expect(wantedWord("菊")).toEqual({ text: "菊", morae: null });
    expect(wantedWord("  ")).toBeNull();
  });

  test("takes Latin letters that are no Japanese romanisation as text", () => {
    expect(wantedWord("DVD")).toEqual({ text: "DVD", morae: null });
  });
});

describe("placesOf", () => {
  test("finds every place where the word sounds, and nothing inside a mora", () => {
    expect(places("きく", "キクカキク")).toEqual([
      [0, 2],
      [3, 5],
    ]);
    expect(places("iku", "キク")).toEqual([]);
  });

  test("hears おう, oo and ō as オー, えい as エー, and keeps short vowels apart", () => {
    for (const typed of ["とうきょう", "tookyoo", "tōkyō", "トーキョー"])
      expect(places(typed, "トーキョーエ")).toEqual([[0, 4]]);
    expect(places("せんせい", "センセー")).toEqual([[0, 4]]);
    expect(places("tokyo", "トーキョー")).toEqual([]);
  });

  test("hears the doubled consonant", () => {
    expect(places("kitte", "キッテ")).toEqual([[0, 3]]);
    expect(places("kite", "キッテ")).toEqual([]);
  });
});
