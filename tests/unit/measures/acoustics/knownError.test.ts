import { expect, test } from "vitest";
import { type JudgedVowel, knownError } from "../../../../src/measures/acoustics/knownError.ts";

const judged = (hit: number, miss: number, alarm: number, right: number): JudgedVowel[] => [
  ...Array.from({ length: hit }, () => ({ devoiced: true, truth: true, probability: 0.95 })),
  ...Array.from({ length: miss }, () => ({ devoiced: false, truth: true, probability: 0.05 })),
  ...Array.from({ length: alarm }, () => ({ devoiced: true, truth: false, probability: 0.95 })),
  ...Array.from({ length: right }, () => ({ devoiced: false, truth: false, probability: 0.05 })),
];

test("knownError gives sensitivity, specificity and F1 by their definitions", () => {
  const error = knownError(judged(90, 10, 5, 195));
  expect(error.sensitivity!.share).toBeCloseTo(0.9, 12);
  expect(error.specificity!.share).toBeCloseTo(0.975, 12);
  expect(error.f1).toBeCloseTo(180 / 195, 12);
});

test("knownError gives the exact interval of 0 of 10 misses: 0.6915 … 1 (Clopper & Pearson: .025^(1/10))", () => {
  const { interval } = knownError(judged(10, 0, 0, 10)).sensitivity!;
  expect(interval.low).toBeCloseTo(0.025 ** (1 / 10), 6);
  expect(interval.high).toBe(1);
});

test("knownError gives Cohen's kappa of a table worked by hand: 45/15/25/15 → (.6 − .54)/.46", () => {
  expect(knownError(judged(45, 25, 15, 15)).kappa).toBeCloseTo((0.6 - 0.54) / 0.46, 9);
});

test("knownError finds no calibration error where shares equal probabilities, and their distance where not", () => {
  const fair = Array.from({ length: 100 }, (_, i) => ({ devoiced: false, truth: i < 25, probability: 0.25 }));
  expect(knownError(fair).calibrationError).toBeCloseTo(0, 12);
  const unfair = fair.map((v) => ({ ...v, probability: 0.45 }));
  expect(knownError(unfair).calibrationError).toBeCloseTo(0.2, 12);
});

test("knownError of nothing, or of one kind, is null where it cannot be told", () => {
  expect(knownError([])).toEqual({
    sensitivity: null,
    specificity: null,
    f1: null,
    kappa: null,
    calibrationError: null,
  });
  const voicedOnly = knownError(judged(0, 0, 0, 5));
  expect([voicedOnly.sensitivity, voicedOnly.f1, voicedOnly.kappa]).toEqual([null, null, null]);
  expect(voicedOnly.specificity!.share).toBe(1);
});
