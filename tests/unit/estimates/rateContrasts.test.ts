import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { compareRates, rateContrasts } from "../../../src/estimates/rateContrasts.ts";
import { devoicingRates } from "../../../src/estimates/rates.ts";
import { predictedMarks } from "../../../src/messages/estimates.ts";
import { benjaminiHochberg } from "../../../src/statistics/benjaminiHochberg.ts";
import { sampleTokens } from "./sampleTokens.ts";

const tokens = sampleTokens(5000, 12, 21).map((t) =>
  // What stands before a pause is devoiced twice as often as the rest, to have something to find.
  t.after === "pause" && t.devoiced === false && t.durationMs % 20 === 0 ? { ...t, devoiced: true } : t,
);
const cells = cellsFromTokens(tokens);

test("rateContrasts sets each label against all others and adjusts for looking at all", () => {
  const { rows, notes } = rateContrasts(cells, { filter: { vowel: "i,u" }, by: "after" });
  expect(rows.map((row) => row.cut)).toEqual(["N", "cl", "e", "k", "pause", "s"]);
  const pause = rows.find((row) => row.cut === "pause")!;
  const rate = (after: string) => devoicingRates(cells, { filter: { vowel: "i,u", after } }).rows[0]!;
  expect(pause.rate).toBeCloseTo(rate("pause").estimate!, 12);
  expect(pause.otherTokens).toBe(rows.reduce((sum, row) => sum + row.tokens, 0) - pause.tokens);
  expect(pause.low).toBeGreaterThan(0.1);
  expect(pause.pAdjusted).toBeLessThan(0.001);
  expect(rows.map((row) => row.pAdjusted)).toEqual(benjaminiHochberg(rows.map((row) => row.p)));
  expect(notes).toHaveLength(1);
});

test("compareRates of two filters is the difference of their rates", () => {
  const [a, b] = [{ vowel: "i" }, { vowel: "u", after: "k" }];
  const [row] = compareRates(cells, a, b).rows;
  const rate = (filter: object) => devoicingRates(cells, { filter }).rows[0]!.estimate!;
  expect(row!.difference).toBeCloseTo(rate(a) - rate(b), 12);
  expect(row!).toMatchObject({ speakers: 12, basis: "annotated", words: null });
});

test("compareRates refuses predicted marks", () => {
  const predicted = cellsFromTokens(
    tokens.map((t) => ({ ...t, devoicedBasis: t.devoicedBasis && "predicted" })),
  );
  const { rows, notes } = compareRates(predicted, { vowel: "i" }, { vowel: "u" });
  expect(rows).toEqual([]);
  expect(notes).toEqual([predictedMarks("d1", "full")]);
});
