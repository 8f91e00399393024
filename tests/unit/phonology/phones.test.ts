import { expect, test } from "vitest";
import {
  isConsonant,
  isPause,
  isVoiceless,
  isVowel,
  normalisePhone,
  phones,
  phoneTable,
} from "../../../src/phonology/phones.ts";

test("phoneTable gives every phone another IPA symbol, so that no two look alike on a page", () => {
  const symbols = phones.map((phone) => phoneTable[phone].ipa);
  expect(new Set(symbols).size).toBe(phones.length);
});

test("isVowel, isConsonant and isPause share the phone set out among them", () => {
  for (const phone of phones)
    expect([isVowel(phone), isConsonant(phone), isPause(phone)].filter(Boolean)).toHaveLength(1);
});

test("isConsonant(p) is true for the moraic nasal and the geminate", () => {
  expect(isConsonant("N") && isConsonant("cl")).toBe(true);
});

test("isVoiceless(p) holds for cl and the voiceless rows, not for N, vowels, pauses or unknown symbols", () => {
  expect(phones.filter(isVoiceless).sort()).toEqual(
    "ch cl f fy h hy k kw ky p py s sh t ts tsy ty".split(" ").sort(),
  );
  expect(isVoiceless("xx")).toBe(false);
});

test.each([
  ["a", { phone: "a", long: false, devoiced: false }],
  ["I", { phone: "i", long: false, devoiced: true }],
  ["U", { phone: "u", long: false, devoiced: true }],
  ["o:", { phone: "o", long: true, devoiced: false }],
  ["q", { phone: "cl", long: false, devoiced: false }],
  ["cl", { phone: "cl", long: false, devoiced: false }],
  ["N", { phone: "N", long: false, devoiced: false }],
  ["ky", { phone: "ky", long: false, devoiced: false }],
  ["silB", { phone: "pause", long: false, devoiced: false }],
  ["sp", { phone: "pause", long: false, devoiced: false }],
] as const)("normalisePhone(%s) is read as the label sets mean it", (label, expected) => {
  expect(normalisePhone(label)).toEqual(expected);
});

test.each(["", ":", "x", "K", "n:", "toString", "あ"])("normalisePhone(%j) is null", (label) => {
  expect(normalisePhone(label)).toBeNull();
});

test("normalisePhone(symbol) keeps every symbol of the phone table", () => {
  for (const phone of phones) expect(normalisePhone(phone)?.phone).toBe(phone);
});
