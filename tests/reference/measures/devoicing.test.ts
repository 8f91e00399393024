import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { knownError } from "../../../src/measures/acoustics/knownError.ts";
import { readKnownSpeech } from "../../helpers/knownSpeech.ts";
import { isCandidate, type KnownToken, measureKnownSpeech } from "../../helpers/measureKnownSpeech.ts";

// The demo's recordings are synthetic and its truth comes from the synthesiser; none of them was used to set the weights.
const speech = (await readKnownSpeech(join(import.meta.dirname, "../../../data/demo")))!;
const { tokens } = measureKnownSpeech(speech);
const candidates = tokens.filter(isCandidate);
const errorOf = (judged: readonly KnownToken[]) =>
  knownError(
    judged.map(({ row, phone }) => ({
      devoiced: row.devoicedHeard!,
      truth: phone.devoiced,
      probability: row.devoicedProbability!,
    })),
  );

describe("the devoicing decision on the demo's speech, whose truth is known", () => {
  test("has something to judge in every vowel", () => {
    expect(candidates.length).toBeGreaterThan(800);
    expect(candidates.filter(({ row }) => row.devoicedHeard === null)).toEqual([]);
  });

  test("reaches F1 of 97 %", () => {
    expect(errorOf(candidates).f1).toBeGreaterThanOrEqual(0.97);
  });

  test("states probabilities that are right within 3 points over ten bins", () => {
    expect(errorOf(candidates).calibrationError).toBeLessThanOrEqual(0.03);
  });

  test("finds 93 % of the vowels that break the text's rule, so it does not repeat the rule", () => {
    const breaking = candidates.filter(({ phone }) => phone.breaksRule);
    expect(breaking.length).toBeGreaterThan(50);
    const right = breaking.filter(({ row, phone }) => row.devoicedHeard === phone.devoiced).length;
    expect(right / breaking.length).toBeGreaterThanOrEqual(0.93);
  });

  test("calls at most 1 % of a, e, o and 3 % of i, u after voiced sounds devoiced", () => {
    const share = (judged: readonly KnownToken[]) =>
      judged.filter(({ row }) => row.devoicedHeard).length / judged.length;
    const of = (vowels: string, after: boolean) =>
      tokens.filter((t) => vowels.includes(t.phone.phone) && (after ? !isCandidate(t) : true));
    expect(share(of("aeo", false))).toBeLessThanOrEqual(0.01);
    expect(share(of("iu", true).filter(({ phone }) => !phone.devoiced))).toBeLessThanOrEqual(0.03);
  });

  test("comes from both decisions, and each alone is right nine times in ten", () => {
    for (const column of ["devoicedByClassifier", "devoicedByIsland"] as const) {
      const right = candidates.filter(({ row, phone }) => row[column] === phone.devoiced).length;
      expect(right / candidates.length).toBeGreaterThan(0.9);
    }
  });
});
