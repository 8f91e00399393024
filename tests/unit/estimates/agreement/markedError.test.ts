import { expect, test } from "vitest";
import { chooseSample } from "../../../../src/estimates/agreement/chooseSample.ts";
import {
  type DecidedVowel,
  markedError,
  type VowelMark,
} from "../../../../src/estimates/agreement/markedError.ts";
import { knownError } from "../../../../src/measures/acoustics/knownError.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

const place = (i: number) => ({
  ...{ dataset: "d", utterance: `u${i}`, phone: "i" },
  ...{ startMs: 100, endMs: 150 },
});
const vowel = (i: number, devoicedHeard: boolean): DecidedVowel => ({
  ...place(i),
  devoicedHeard,
  devoicedProbability: devoicedHeard ? 0.9 : 0.1,
});
const mark = (i: number, devoiced: boolean | null, weight = 1): VowelMark => ({
  ...place(i),
  devoiced,
  weight,
});

test("markedError of equal weights is the plain known error", () => {
  const vowels = Array.from({ length: 40 }, (_, i) => vowel(i, i % 4 !== 0));
  const marks = vowels.map((_, i) => mark(i, i % 4 !== 0 && i % 9 !== 0, 7));
  const { corpus, sample, used } = markedError(marks, vowels);
  const plain = knownError(
    vowels.map((v, i) => ({
      devoiced: v.devoicedHeard!,
      truth: marks[i]!.devoiced!,
      probability: v.devoicedProbability!,
    })),
  );
  expect(used).toBe(40);
  expect(sample).toEqual(plain);
  expect(corpus.sensitivity!.share).toBeCloseTo(plain.sensitivity!.share, 12);
  expect(corpus.specificity!.of).toBeCloseTo(plain.specificity!.of, 9);
  expect(corpus.specificity!.interval.low).toBeCloseTo(plain.specificity!.interval.low, 9);
  expect(corpus.kappa).toBeCloseTo(plain.kappa!, 12);
  expect(corpus.f1).toBeCloseTo(plain.f1!, 12);
});

test("markedError counts a mark for as many vowels as it stands for", () => {
  // Truly devoiced: one found that stands for 30, one missed that stands for 10.
  const vowels = [vowel(0, true), vowel(1, false), vowel(2, false)];
  const { corpus } = markedError([mark(0, true, 30), mark(1, true, 10), mark(2, false, 60)], vowels);
  expect(corpus.sensitivity).toMatchObject({ share: 0.75, of: 1600 / 1000 });
  expect(corpus.specificity!.share).toBe(1);
  expect(corpus.f1).toBeCloseTo((2 * 30) / (40 + 30), 12);
  // Agreement 0.9, chance 0.4 · 0.3 + 0.6 · 0.7 = 0.54.
  expect(corpus.kappa).toBeCloseTo((0.9 - 0.54) / 0.46, 12);
});

test("markedError is right on average over samples drawn by the decision, where the raw sample is not", () => {
  const random = seededRandom(8);
  const all = Array.from({ length: 2000 }, (_, i) => {
    const doubtful = i >= 1800;
    const truth = random.uniform() < (doubtful ? 0.5 : 0.97);
    const probability = doubtful ? 0.4 : 0.95;
    const own = { ...place(i), speaker: "s", before: "k", after: "k", probability, truth };
    return { ...own, devoicedHeard: probability >= 0.5, devoicedProbability: probability };
  });
  const truly = all.filter(({ truth }) => truth);
  const right = truly.filter(({ devoicedHeard }) => devoicedHeard).length / truly.length;
  let [weighted, raw] = [0, 0];
  const draws = 100;
  for (let seed = 0; seed < draws; seed++) {
    const marks = chooseSample(all, 150, seed).map(({ token, tokensInStratum, sampledInStratum }) => ({
      ...place(Number(token.utterance.slice(1))),
      ...{ devoiced: token.truth, weight: tokensInStratum / sampledInStratum },
    }));
    const { corpus, sample } = markedError(marks, all);
    weighted += corpus.sensitivity!.share / draws;
    raw += sample.sensitivity!.share / draws;
  }
  expect(Math.abs(weighted - right)).toBeLessThan(0.01);
  expect(right - raw).toBeGreaterThan(0.05);
});

test("markedError leaves unsure marks out, and vowels that this run lacks or did not hear", () => {
  const unheard = { ...vowel(2, true), devoicedHeard: null, devoicedProbability: null };
  const elsewhere = { ...vowel(3, true), startMs: 400, endMs: 450 };
  const { used, unsure, notFound } = markedError(
    [mark(0, true), mark(1, null), mark(2, true), mark(3, true), mark(4, true)],
    [vowel(0, true), vowel(1, true), unheard, elsewhere],
  );
  expect({ used, unsure, notFound }).toEqual({ used: 1, unsure: 1, notFound: 3 });
});

test("markedError finds the marked vowel again after its edges moved, the nearest of two", () => {
  const moved = { ...vowel(0, true), startMs: 120, endMs: 180 };
  const other = { ...vowel(0, false), startMs: 60, endMs: 95 };
  expect(markedError([mark(0, true)], [other, moved]).sample.sensitivity!.share).toBe(1);
});

test("markedError without marks knows nothing", () => {
  const { corpus, used } = markedError([], []);
  expect(used).toBe(0);
  expect(corpus).toMatchObject({ sensitivity: null, specificity: null, f1: null, kappa: null });
});
