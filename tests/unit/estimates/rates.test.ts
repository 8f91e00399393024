import { expect, test } from "vitest";
import { type CellToken, cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { clusteredRate } from "../../../src/estimates/clusteredRate.ts";
import { devoicingRates } from "../../../src/estimates/rates.ts";
import {
  fewVowels,
  noDevoicingMarks,
  nothingSelected,
  predictedMarks,
} from "../../../src/messages/estimates.ts";
import { plainToken, sampleTokens, shuffled } from "./sampleTokens.ts";

const tokens = sampleTokens(6000, 7, 2);

function bySpeaker(chosen: readonly CellToken[]) {
  const speakers = [...new Set(chosen.map((t) => t.speaker))].sort();
  const count = (test: (t: CellToken) => boolean) =>
    speakers.map((speaker) => chosen.filter((t) => t.speaker === speaker && test(t)).length);
  return { marked: count(() => true), devoiced: count((t) => t.devoiced === true) };
}

test("devoicingRates by two columns gives what counting the tokens gives", () => {
  const { rows, notes } = devoicingRates(cellsFromTokens(tokens), {
    filter: { vowel: "i,u", before: "voiceless" },
    by: ["phone", "after"],
  });
  expect(notes).toEqual([]);
  expect(rows).toHaveLength(12);
  for (const row of rows) {
    const chosen = tokens.filter(
      (t) =>
        t.kind === "vowel" &&
        t.devoiced !== null &&
        (t.before === "k" || t.before === "s") &&
        t.phone === row.by.phone &&
        t.after === row.by.after,
    );
    const { marked, devoiced } = bySpeaker(chosen);
    const { estimate, low, high } = clusteredRate(marked, devoiced, 0.95);
    expect(row).toMatchObject({
      tokens: chosen.length,
      speakers: 7,
      words: null,
      basis: "annotated",
      level: 0.95,
    });
    expect(row.estimate).toBeCloseTo(estimate, 12);
    expect(row.low).toBeCloseTo(low, 12);
    expect(row.high).toBeCloseTo(high, 12);
  }
});

test("devoicingRates does not depend on the order of tokens or on how they fall into cells", () => {
  const whole = devoicingRates(cellsFromTokens(tokens), { by: ["position"] }).rows;
  const mixed = devoicingRates(cellsFromTokens(shuffled(tokens, 5)), { by: ["position"] }).rows;
  expect(mixed).toEqual(whole);
});

test("devoicingRates speaks of one speaker only where there is one", () => {
  const [row] = devoicingRates(cellsFromTokens(sampleTokens(300, 1, 3))).rows;
  expect(row).toMatchObject({ speakers: 1, scope: "one speaker", safe: false, equalWeight: null });
  expect(row!.warnings).toHaveLength(1);
});

test("devoicingRates of fewer than ten vowels says that they are too few", () => {
  const chosen = tokens.filter((t) => t.kind === "vowel" && t.devoiced !== null);
  const few = (count: number) =>
    devoicingRates(cellsFromTokens(chosen.slice(0, count))).rows[0]!.warnings.includes(fewVowels(10));
  expect([1, 3, 9, 10, 200].map(few)).toEqual([true, true, true, false, false]);
});

test("devoicingRates refuses marks predicted by rule and says why", () => {
  const predicted = Array.from({ length: 10 }, (_, i) => ({
    ...plainToken,
    devoiced: i < 7,
    devoicedBasis: "predicted",
  }));
  const { rows, notes } = devoicingRates(cellsFromTokens(predicted));
  expect(rows).toHaveLength(1);
  expect(rows[0]).toMatchObject({
    estimate: null,
    low: null,
    high: null,
    method: "predicted by rule, not a rate",
    basis: "predicted",
    predictedShare: 0.7,
    tokens: 10,
    scope: "rule",
  });
  expect(notes).toEqual([predictedMarks("d1", "full")]);
});

test("devoicingRates of labels without marks gives no row but a note", () => {
  const unmarked = [
    { ...plainToken, devoiced: null, devoicedBasis: null },
    { ...plainToken, labelSet: "marked" },
  ];
  const { rows, notes } = devoicingRates(cellsFromTokens(unmarked));
  expect(rows.map((row) => row.labelSet)).toEqual(["marked"]);
  expect(notes).toEqual([noDevoicingMarks("d1", "full", 1)]);
});

test("devoicingRates never pools datasets, label sets or bases", () => {
  const variants = [
    {},
    { dataset: "d2" },
    { labelSet: "other" },
    { labelSet: "other", devoicedBasis: "predicted" },
  ] as const;
  const mixed = variants.flatMap((variant) => tokens.slice(0, 500).map((t) => ({ ...t, ...variant })));
  const { rows } = devoicingRates(cellsFromTokens(mixed.filter((t) => t.devoiced !== null)));
  expect(rows.map((row) => row.by)).toEqual([
    { dataset: "d1", labelSet: "full", devoicedBasis: "annotated" },
    { dataset: "d1", labelSet: "other", devoicedBasis: "annotated" },
    { dataset: "d1", labelSet: "other", devoicedBasis: "predicted" },
    { dataset: "d2", labelSet: "full", devoicedBasis: "annotated" },
  ]);
});

test("devoicingRates with a filter that nothing matches says so", () => {
  const { rows, notes } = devoicingRates(cellsFromTokens(tokens), { filter: { speaker: "nobody" } });
  expect(rows).toEqual([]);
  expect(notes).toEqual([nothingSelected("vowel")]);
  expect(devoicingRates(cellsFromTokens([])).rows).toEqual([]);
});

test("devoicingRates leaves consonants out and gives finite numbers in every cut", () => {
  const { rows } = devoicingRates(cellsFromTokens(sampleTokens(400, 3, 9)), {
    by: ["phone", "before", "after", "accented"],
  });
  expect(rows.length).toBeGreaterThan(100);
  for (const row of rows) {
    expect(["a", "i", "u"]).toContain(row.by.phone);
    for (const value of [row.estimate, row.low, row.high]) expect(value).toSatisfy(Number.isFinite);
    expect(row.low).toBeLessThanOrEqual(row.estimate!);
    expect(row.high).toBeGreaterThanOrEqual(row.estimate!);
  }
});
