import { describe, expect, test } from "vitest";
import { type CellToken, cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { crossedRate } from "../../../src/estimates/crossedRate.ts";
import { devoicingRates } from "../../../src/estimates/rates.ts";
import { tokenTableOfRows } from "../../../src/estimates/tokenTable.ts";
import { ratesWithWords } from "../../../src/estimates/words.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { plainToken } from "./sampleTokens.ts";

/** Vowels of words that differ much in their rate, speakers hardly. */
function invent(knownWords = 1): (CellToken & { readonly word: string | null })[] {
  const random = seededRandom(12);
  const rateOf = Array.from({ length: 9 }, (_, w) => (w % 3 === 0 ? 0.9 : 0.1));
  return Array.from({ length: 900 }, (_, i) => {
    const word = random.below(9);
    return {
      ...{ ...plainToken, dataset: "d", labelSet: "l", kind: "vowel", before: "k", after: "t" },
      ...{ phone: word < 5 ? "i" : "u", speaker: `s${i % 12}`, length: i % 4 === 0 ? "long" : "short" },
      ...{
        devoiced: random.uniform() < rateOf[word]!,
        devoicedBasis: i % 50 === 0 ? "predicted" : "annotated",
      },
      ...{ durationMs: 50 + 20 * random.uniform(), timeBasis: "annotated", atFloor: i % 9 === 0 },
      word: random.uniform() < knownWords ? `w${word}` : null,
    } as CellToken & { word: string | null };
  });
}

describe("ratesWithWords", () => {
  test("counts words and gives the interval by speaker and word, as by brute force", () => {
    const tokens = invent();
    const options = { filter: { vowel: "i,u", length: "short" }, by: ["phone"] as const };
    const plain = devoicingRates(cellsFromTokens(tokens), options);
    const got = ratesWithWords(plain, tokenTableOfRows(tokens), options);
    const evidence = got.rows.filter(({ basis }) => basis === "annotated");
    expect(evidence.length).toBe(2);
    for (const row of evidence) {
      const own = tokens.filter(
        ({ phone, length, devoicedBasis }) =>
          phone === row.by.phone && length === "short" && devoicedBasis === "annotated",
      );
      expect(own.length).toBe(row.tokens);
      expect(row.words).toBe(new Set(own.map(({ word }) => word)).size);
      const { low, high } = crossedRate(own as never, 0.95)!;
      expect([row.crossed!.low, row.crossed!.high]).toEqual([low, high]);
      expect(row.crossed!.widest).not.toBe("speakers");
      expect(high - low).toBeGreaterThan(2 * (row.high! - row.low!));
    }
    for (const row of got.rows.filter(({ basis }) => basis === "predicted")) {
      expect(row.words).toBeGreaterThan(0);
      expect(row.crossed).toBeNull();
    }
  });

  test("gives nothing where words are unknown, or the tokens are others", () => {
    const tokens = invent(0.5);
    const plain = devoicingRates(cellsFromTokens(tokens));
    expect(ratesWithWords(plain, tokenTableOfRows(tokens), {}).rows).toEqual(plain.rows);
    const others = tokenTableOfRows(invent().slice(0, 800));
    expect(ratesWithWords(plain, others, {}).rows.every(({ words }) => words === null)).toBe(true);
  });
});
