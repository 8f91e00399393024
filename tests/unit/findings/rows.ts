import type { RateRow } from "../../../src/estimates/rates.ts";
import type { RatioRow } from "../../../src/estimates/ratios.ts";

/** A rate row with plain values; `changes` say what a test is about. */
export function rateRow(changes: Partial<RateRow> = {}): RateRow {
  return {
    by: { phone: "i" },
    estimate: 0.8,
    low: 0.7,
    high: 0.9,
    level: 0.95,
    method: "a method",
    tokens: 100,
    speakers: 12,
    words: null,
    crossed: null,
    basis: "annotated",
    dataset: "d",
    labelSet: "s",
    devoiced: 80,
    predictedShare: null,
    equalWeight: null,
    corrected: null,
    scope: "speakers",
    safe: true,
    warnings: [],
    ...changes,
  };
}

/** Marks written by a text rule. */
export function ruleRow(changes: Partial<RateRow> = {}): RateRow {
  return rateRow({
    estimate: null,
    low: null,
    high: null,
    basis: "predicted",
    scope: "rule",
    predictedShare: 0.8,
    ...changes,
  });
}

const side = { tokens: 50, meanMs: 60, geometricMeanMs: 55, medianMs: 57, atFloorShare: 0, devoiced: 0 };

export function ratioRow(changes: Partial<RatioRow> = {}): RatioRow {
  return {
    by: { phone: "a" },
    estimate: 2.4,
    low: 2.2,
    high: 2.6,
    level: 0.95,
    method: "a method",
    tokens: 100,
    speakers: 12,
    ...{ words: null, crossed: null, voiced: null },
    phones: ["a"],
    arithmetic: 2.3,
    median: 2.5,
    medianReason: null,
    long: { ...side, meanMs: 140, geometricMeanMs: 132 },
    short: side,
    atFloorShare: 0,
    bound: null,
    censored: null,
    equalWeight: null,
    scope: "speakers",
    safe: true,
    warnings: [],
    basis: "aligned",
    dataset: "d",
    labelSet: "s",
    contrast: "vowel-length",
    surroundings: "consonants",
    ...changes,
  } as RatioRow;
}

export { side };
