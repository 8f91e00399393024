import { expect, test } from "vitest";
import { type CellToken, cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { durationRatios } from "../../../src/estimates/ratios.ts";
import { ratiosWithWords } from "../../../src/estimates/ratiosWithWords.ts";
import { tokenTableOfRows } from "../../../src/estimates/tokenTable.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { plainToken } from "./sampleTokens.ts";

type Token = CellToken & { readonly word: string | null };

/** Vowels whose words differ in length; every fifth short /i/ is devoiced and half as long. */
function invent(devoicedBasis = "annotated"): Token[] {
  const random = seededRandom(12);
  const wordMs = Array.from({ length: 24 }, () => 60 * Math.exp(0.3 * random.normal()));
  return Array.from({ length: 1200 }, (_, i) => {
    const word = random.below(24);
    const length = word % 3 === 0 ? "long" : "short";
    const phone = word < 12 ? "i" : "u";
    const devoiced = phone === "i" && length === "short" && random.uniform() < 0.2;
    const ms =
      wordMs[word]! * (length === "long" ? 2.4 : devoiced ? 0.5 : 1) * Math.exp(0.1 * random.normal());
    return {
      ...{ ...plainToken, dataset: "d", labelSet: "l", speaker: `s${i % 12}`, phone, length, devoiced },
      ...{ devoicedBasis, durationMs: ms, timeBasis: "annotated", atFloor: i % 9 === 0, word: `w${word}` },
    } as Token;
  });
}

const options = { contrast: "vowel-length", by: ["phone"] } as const;
const told = (tokens: readonly Token[], floor: "keep" | "drop" = "keep") =>
  ratiosWithWords(durationRatios(cellsFromTokens(tokens), { ...options, floor }), tokenTableOfRows(tokens), {
    ...options,
    floor,
  }).rows;

test("ratiosWithWords counts the words of the sounds compared, also without those at the floor, and changes nothing else", () => {
  const tokens = invent();
  for (const floor of ["keep", "drop"] as const) {
    const plain = durationRatios(cellsFromTokens(tokens), { ...options, floor });
    const got = told(tokens, floor);
    expect(got.map(({ by, words }) => [by.phone, words])).toEqual([
      ["i", 12],
      ["u", 12],
    ]);
    expect(got.map((row) => ({ ...row, words: null, crossed: null, voiced: null }))).toEqual(plain.rows);
  }
});

test("ratiosWithWords gives a wider interval where words differ, about the same ratio", () => {
  for (const { estimate, low, high, crossed } of told(invent())) {
    expect(crossed!.widest).not.toBe("speakers");
    expect(crossed!.high / crossed!.low).toBeGreaterThan(1.5 * (high! / low!));
    expect(crossed!.low).toBeLessThan(estimate!);
    expect(crossed!.high).toBeGreaterThan(estimate!);
  }
});

test("ratiosWithWords tells the ratio without devoiced vowels as the cells without them give it", () => {
  const tokens = invent();
  const [i, u] = told(tokens);
  const [voiced] = durationRatios(cellsFromTokens(tokens.filter((token) => !token.devoiced)), options).rows;
  expect(u!.voiced).toBeNull();
  for (const bound of ["estimate", "low", "high"] as const)
    expect(i!.voiced![bound]).toBeCloseTo(voiced![bound]!, 10);
  expect(i!.voiced).toMatchObject({
    longTokens: voiced!.long.tokens,
    shortTokens: voiced!.short.tokens,
    devoicedShort: tokens.filter(({ devoiced }) => devoiced).length,
  });
  expect(i!.voiced!.estimate).toBeLessThan(i!.estimate!);
});

test("ratiosWithWords takes no mark of a text rule for a devoiced vowel, and nothing from other tokens", () => {
  expect(told(invent("predicted")).map(({ voiced }) => voiced)).toEqual([null, null]);
  const tokens = invent();
  const plain = durationRatios(cellsFromTokens(tokens), options);
  expect(ratiosWithWords(plain, tokenTableOfRows(tokens.slice(40)), options).rows).toEqual(plain.rows);
  const unknown = told(tokens.map((token) => ({ ...token, word: null })));
  expect(unknown.map(({ words, crossed }) => [words, crossed])).toEqual([
    [null, null],
    [null, null],
  ]);
  expect(unknown[0]!.voiced).not.toBeNull();
});
