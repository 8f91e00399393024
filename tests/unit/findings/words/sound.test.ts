import { describe, expect, test } from "vitest";
import {
  kanaOfSound,
  moraeOfSound,
  phonesOfUnit,
  soundOf,
  soundOfMorae,
  spellingKey,
} from "../../../../src/findings/words/sound.ts";
import { kanaToMorae } from "../../../../src/phonology/kana.ts";
import { moraTable } from "../../../../src/phonology/moraTable.ts";

describe("soundOf", () => {
  test("gives one unit a mora, ー ッ ン as themselves", () => {
    for (const [kana, morae] of [
      ["ガッコー", 4],
      ["シャシン", 3],
      ["キッテ", 3],
      ["スーパーマーケット", 9],
    ] as const) {
      expect(soundOf(kana)).toHaveLength(morae);
      expect(soundOfMorae(moraeOfSound(soundOf(kana)!))).toBe(soundOf(kana));
    }
    expect([...soundOf("ガッコー")!].slice(1)).toEqual(["ッ", soundOf("コ"), "ー"]);
  });

  test("is equal for kana that sound alike, in either kana and either width", () => {
    expect(soundOf("ヂカン")).toBe(soundOf("じかん"));
    expect(soundOf("ヲ")).toBe(soundOf("オ"));
    expect(soundOf("ｶﾞｯｺｰ")).toBe(soundOf("ガッコー"));
    expect(soundOf("カァ")).toBe(soundOf("カー"));
    expect(soundOf("シカ")).not.toBe(soundOf("シュカ"));
  });

  test("is null for what is no kana or begins with what must follow something", () => {
    for (const odd of ["", "ABC", "東", "ーカ", "カ3"]) expect(soundOf(odd), odd).toBeNull();
  });

  test("takes the fast way and the long way to the same sound for every kana of the table", () => {
    for (const [kana, phones] of moraTable)
      for (const reading of [kana, `${kana}ー`, `カ${kana}ンッテ`, `コ${kana}`]) {
        const long = kanaToMorae(reading);
        expect(soundOf(reading), reading).toBe(long.unknown.length > 0 ? null : soundOfMorae(long.morae));
        expect(phonesOfUnit(soundOf(kana)!)).toEqual(phones);
      }
  });
});

test("kanaOfSound(soundOf(kana)) gives the usual spelling", () => {
  for (const kana of ["トーキョー", "キッテ", "シンブン", "フィルム", "ヒャク"])
    expect(kanaOfSound(soundOf(kana)!)).toBe(kana);
});

test("spellingKey joins spelt and pronounced readings of one word and keeps the morae", () => {
  for (const [spelt, said] of [
    ["とうきょう", "トーキョー"],
    ["おおきい", "オーキー"],
    ["せんせい", "センセー"],
    ["おねえさん", "オネーサン"],
  ] as const) {
    expect(spellingKey(soundOf(spelt)!)).toBe(spellingKey(soundOf(said)!));
    expect(soundOf(spelt)).toHaveLength(soundOf(said)!.length);
  }
  expect(spellingKey(soundOf("アオ")!)).toBe(soundOf("アオ"));
  expect(spellingKey(soundOf("ビル")!)).not.toBe(spellingKey(soundOf("ビール")!));
});
