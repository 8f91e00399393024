import { describe, expect, test } from "vitest";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import { readTranscript, readTruth } from "./demoFiles.ts";

const lines = readTranscript();
const truth = readTruth();
const morae = lines.flatMap(({ reading }) => {
  const read = kanaToMorae(reading).morae;
  return read.map((mora, index) => ({ ...mora, next: read[index + 1] }));
});

const vowels = ["a", "i", "u", "e", "o"] as const;

describe("contrasts in the demo", () => {
  test.each(vowels)("/%s/ is read long at least 10 times and short at least 100 times", (vowel) => {
    const long = morae.filter((mora) => mora.kind === "long" && mora.vowel === vowel).length;
    const all = morae.filter((mora) => mora.kind === "cv" && mora.vowel === vowel).length;
    expect(long).toBeGreaterThanOrEqual(10);
    expect(all - long).toBeGreaterThanOrEqual(100);
  });

  test.each(["t", "k", "p", "s", "sh", "ch"])("%s is read doubled at least 4 times", (consonant) => {
    const doubled = morae.filter(({ kind, next }) => kind === "geminate" && next?.phones[0] === consonant);
    expect(doubled.length).toBeGreaterThanOrEqual(4);
  });

  test("the same vowel meets itself without ー too, so only the reading tells long from twice", () => {
    const twice = morae.filter(({ vowel, next }) => {
      return vowel !== null && next?.kind === "cv" && next.vowel === vowel && next.phones.length === 1;
    });
    expect(twice.length).toBeGreaterThanOrEqual(10);
  });

  test("ン stands before vowels, consonants of every place and at the end", () => {
    const after = new Set(morae.filter(({ kind }) => kind === "nasal").map(({ next }) => next?.phones[0]));
    for (const phone of ["k", "g", "t", "d", "n", "p", "b", "s", "sh"]) expect(after).toContain(phone);
  });

  test.each([
    ["チズ", "チーズ"],
    ["ビル", "ビール"],
    ["オバサン", "オバーサン"],
    ["オジサン", "オジーサン"],
    ["キテ", "キッテ"],
    ["カコ", "カッコー"],
    ["セーキ", "セッキ"],
    ["サカ", "サッカ"],
  ])("both words of the pair %s, %s are read", (one, other) => {
    for (const word of [one, other]) expect(lines.some(({ reading }) => reading.includes(word))).toBe(true);
  });

  test("phones keep lengths in which they can be heard", () => {
    const odd = [...truth.entries()].flatMap(([id, phones]) =>
      phones.flatMap(({ phone, startMs, endMs }) => {
        const [least, most] =
          phone === "cl" ? [65, 260] : phone === "sil" || phone === "pau" ? [100, 400] : [25, 260];
        const durationMs = endMs - startMs;
        return durationMs >= least && durationMs <= most ? [] : [`${id} ${phone} ${durationMs}`];
      }),
    );
    expect(odd).toEqual([]);
  });
});
