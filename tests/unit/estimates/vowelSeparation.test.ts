import { expect, test } from "vitest";
import { vowelSeparation } from "../../../src/estimates/vowelSeparation.ts";
import type { SpeakerVowels } from "../../../src/estimates/vowelSpaceSpeakers.ts";
import { normalCdf } from "../../../src/statistics/distributions.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

function speaker(apart: number, tokens: number, seed: number): SpeakerVowels {
  const random = seededRandom(seed);
  const cloud = (x: number) => ({
    f1Hz: Array.from({ length: tokens }, () => 500 + 40 * (x + random.normal())),
    f2Hz: Array.from({ length: tokens }, () => 1500 + 90 * random.normal()),
  });
  const vowels = new Map([["i short", cloud(0)] as const, ["e short", cloud(apart)] as const]);
  return { speaker: `s${seed}`, f0MedianHz: null, vowels, scales: null };
}

test("vowelSeparation of two equal clouds `d` standard deviations apart is Φ(d / 2)", () => {
  for (const apart of [1, 2, 4]) {
    const [pair] = vowelSeparation([speaker(apart, 4000, 1)], ["i", "e"]);
    expect(pair!.tokens).toEqual([8000]);
    expect(pair!.right[0]! / 8000).toBeCloseTo(normalCdf(apart / 2), 1.9);
  }
});

test("vowelSeparation of vowels that are the same is chance, also of few: a token does not draw its own centre", () => {
  const few = Array.from({ length: 400 }, (_, seed) => speaker(0, 5, seed + 1));
  const [pair] = vowelSeparation(few, ["i", "e"]);
  const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
  expect(total(pair!.right) / total(pair!.tokens)).toBeLessThan(0.51);
});

test("vowelSeparation leaves out speakers without enough vowels of every kind", () => {
  const [pair] = vowelSeparation([speaker(2, 4, 1), speaker(2, 5, 2)], ["i", "e"]);
  expect(pair!.tokens).toEqual([10]);
  expect(vowelSeparation([speaker(2, 9, 1)], ["i", "e", "a"]).map(({ tokens }) => tokens)).toEqual([
    [],
    [],
    [],
  ]);
});
