import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { toIpa } from "../../../src/phonology/ipa.ts";
import { type Phone, phones } from "../../../src/phonology/phones.ts";

const { names } = JSON.parse(
  readFileSync(new URL("fixtures/unicode-names.json", import.meta.url), "utf8"),
) as { names: Record<string, string> };

// Names from the Unicode Character Database; which letter stands for which sound: chart of the International
// Phonetic Association (names of the letters) and Okada 1999 for the sounds of Japanese.
test.each([
  ["u", "LATIN SMALL LETTER TURNED M"],
  ["g", "LATIN SMALL LETTER SCRIPT G"],
  ["sh", "LATIN SMALL LETTER C WITH CURL"],
  ["j", "LATIN SMALL LETTER Z WITH CURL"],
  ["f", "LATIN SMALL LETTER PHI"],
  ["hy", "LATIN SMALL LETTER C WITH CEDILLA"],
  ["ny", "LATIN SMALL LETTER N WITH LEFT HOOK"],
  ["N", "LATIN LETTER SMALL CAPITAL N"],
  ["r", "LATIN SMALL LETTER R WITH FISHHOOK"],
] as const)("toIpa(%s) is one character named %s", (phone, name) => {
  expect([...toIpa(phone)].map((letter) => names[letter])).toEqual([name]);
});

test("toIpa(i, {devoiced, long}) adds the ring below and the length mark by their Unicode names", () => {
  expect([...toIpa("i", { devoiced: true, long: true })].slice(1).map((letter) => names[letter])).toEqual([
    "COMBINING RING BELOW",
    "MODIFIER LETTER TRIANGULAR COLON",
  ]);
});

test("toIpa(a, {devoiced}) is the composed letter that NFC asks for", () => {
  expect(names[toIpa("a", { devoiced: true })]).toBe("LATIN SMALL LETTER A WITH RING BELOW");
});

test("toIpa(palatalised) ends in the modifier j, toIpa(labialised) in the modifier w", () => {
  const lastName = (phone: Phone) => names[[...toIpa(phone)].at(-1)!];
  const own = ["ny", "hy", "y"];
  for (const phone of phones.filter((symbol) => /y$/u.test(symbol) && !own.includes(symbol)))
    expect(lastName(phone), phone).toBe("MODIFIER LETTER SMALL J");
  for (const phone of ["kw", "gw"] as const) expect(lastName(phone)).toBe("MODIFIER LETTER SMALL W");
});
