import { expect, test } from "vitest";
import { chooseSample, shareOut, stratumOf } from "../../../../src/estimates/agreement/chooseSample.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

const random = seededRandom(4);
const tokens = Array.from({ length: 3000 }, (_, id) => ({
  id,
  speaker: `s${random.below(6)}`,
  before: random.uniform() < 0.4 ? "k" : "m",
  after: ["k", "pause", "cl", "m"][random.below(4)]!,
  probability: random.uniform() ** 3,
}));

test("shareOut(sizes, n) gives n together, none above its size, and starves none", () => {
  const sizes = [2000, 500, 40, 3, 0];
  for (const n of [0, 1, 7, 60, 200, 2543, 9000]) {
    const shares = shareOut(sizes, n);
    expect(shares.reduce((a, b) => a + b, 0)).toBe(Math.min(n, 2543));
    expect(shares.every((share, i) => share >= 0 && share <= sizes[i]!)).toBe(true);
  }
  expect(shareOut(sizes, 60)[3]).toBe(3);
});

test("shareOut(sizes, n) follows the square root of the sizes where there is room", () => {
  const [large, small] = shareOut([40_000, 10_000], 300) as [number, number];
  expect(Math.abs(large - 200)).toBeLessThanOrEqual(1);
  expect(large + small).toBe(300);
});

test("chooseSample draws each vowel once, and says how many of its stratum it drew", () => {
  const chosen = chooseSample(tokens, 200, 1);
  expect(new Set(chosen.map(({ token }) => token.id)).size).toBe(200);
  for (const { token, stratum, tokensInStratum, sampledInStratum } of chosen) {
    expect(stratum).toBe(stratumOf(token));
    expect(tokensInStratum).toBe(tokens.filter((one) => stratumOf(one) === stratum).length);
    expect(sampledInStratum).toBe(chosen.filter((one) => one.stratum === stratum).length);
  }
});

test("chooseSample spreads a stratum over its speakers in proportion", () => {
  const many = Array.from({ length: 600 }, (_, id) => ({
    ...{ id, before: "k", after: "k", probability: 0.5 },
    speaker: id < 300 ? "a" : id < 500 ? "b" : "c",
  }));
  const chosen = chooseSample(many, 60, 3);
  const count = (speaker: string) => chosen.filter(({ token }) => token.speaker === speaker).length;
  expect(Math.abs(count("a") - 30)).toBeLessThanOrEqual(1);
  expect(Math.abs(count("b") - 20)).toBeLessThanOrEqual(1);
});

test("chooseSample gives every vowel of a stratum the same chance", () => {
  const few = Array.from({ length: 10 }, (_, id) => ({
    ...{ id, before: "k", after: "k", probability: 0.5 },
    speaker: id < 7 ? "a" : "b",
  }));
  const drawn = new Float64Array(10);
  for (let seed = 0; seed < 4000; seed++)
    for (const { token } of chooseSample(few, 3, seed)) drawn[token.id]!++;
  // 1200 expected each, standard deviation 29.
  for (const times of drawn) expect(Math.abs(times - 1200)).toBeLessThan(130);
});

test("chooseSample gives the same sample for the same seed, another for another", () => {
  const ids = (seed: number) => chooseSample(tokens, 50, seed).map(({ token }) => token.id);
  expect(ids(1)).toEqual(ids(1));
  expect(ids(1)).not.toEqual(ids(2));
});

test("chooseSample's order tells nothing of the decision", () => {
  const chosen = chooseSample(tokens, 400, 5);
  const half = (from: number) =>
    chosen.slice(from, from + 200).reduce((sum, { token }) => sum + token.probability, 0) / 200;
  expect(Math.abs(half(0) - half(200))).toBeLessThan(0.12);
});
