import { expect, test } from "vitest";
import { type CellToken, cellsFromTokens } from "../../../../src/estimates/cellsFromTokens.ts";
import { devoicingRates } from "../../../../src/estimates/rates.ts";
import { tableOfVowelWords, vowelWords } from "../../../../src/estimates/samples/vowelWords.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { ratesWithWords } from "../../../../src/estimates/words.ts";
import { inventTokens } from "../../../pages/fixtures/inventTokens.ts";

const rows = (devoicedBasis: "measured" | "predicted") =>
  inventTokens({
    ...{ dataset: "d", labelSet: "l", speakers: 3, phrasesPerSpeaker: 20, seed: 1 },
    ...{ devoicedBasis, heard: true },
  });
const table = tokenTableOfRows(rows("measured") as Record<string, unknown>[]);
const cut = { filter: { vowel: ["i", "u"], before: "voiceless" }, by: ["phone"] as const, level: 0.95 };

test("vowelWords, as JSON and back, gives the intervals by word that all tokens give", () => {
  const rates = devoicingRates(cellsFromTokens(rows("measured") as CellToken[]), cut);
  const whole = ratesWithWords(rates, table, cut);
  expect(whole.rows.every(({ crossed }) => crossed !== null)).toBe(true);
  for (const carried of [vowelWords(table), vowelWords(table, vowelWords(table).word.length - 1)]) {
    const back = tableOfVowelWords(JSON.parse(JSON.stringify(carried)));
    expect(ratesWithWords(rates, back, cut)).toEqual(whole);
  }
});

test("vowelWords keeps /i/ and /u/ after voiceless sounds where all are too many, and none where these are", () => {
  const all = vowelWords(table);
  expect(all.kept).toBe("all");
  const high = vowelWords(table, all.word.length - 1);
  expect(high.kept).toBe("high");
  expect(new Set(high.labels.phone)).toEqual(new Set(["i", "u"]));
  expect(vowelWords(table, 3)).toMatchObject({ kept: "too-many", word: [] });
});

test("vowelWords carries neither words nor marks that a rule predicted", () => {
  expect(JSON.stringify(vowelWords(table))).not.toMatch(/word\d|"[ぁ-ん一-龠]/);
  expect(vowelWords(tokenTableOfRows(rows("predicted") as Record<string, unknown>[])).word).toEqual([]);
});
