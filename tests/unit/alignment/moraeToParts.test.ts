import { expect, test } from "vitest";
import { moraeToParts } from "../../../src/alignment/moraeToParts.ts";
import { kanaToMorae } from "../../../src/phonology/kana.ts";

const parts = (kana: string) => moraeToParts(kanaToMorae(kana).morae);

test("moraeToParts joins a long vowel and two equal vowels, tells their morae, and keeps others apart", () => {
  expect(parts("トーイ").map(({ phone, long, mora, morae }) => [phone, long, mora, morae])).toEqual([
    ["t", false, 0, 1],
    ["o", true, 0, 2],
    ["i", false, 2, 1],
  ]);
  expect(parts("ミズウミ").map(({ phone, long }) => phone + (long ? ":" : ""))).toEqual([
    "m",
    "i",
    "z",
    "u:",
    "m",
    "i",
  ]);
});

test("moraeToParts makes one part of at most two vowels", () => {
  expect(parts("オオオカ").map(({ phone, long }) => phone + (long ? ":" : ""))).toEqual([
    "o:",
    "o",
    "k",
    "a",
  ]);
});

test("moraeToParts lets a pause stand at each break but the last, and joins no vowels across it", () => {
  expect(parts("ア、ア。").map(({ phone, optional, long }) => [phone, optional, long])).toEqual([
    ["a", false, false],
    ["pause", true, false],
    ["a", false, false],
  ]);
});
