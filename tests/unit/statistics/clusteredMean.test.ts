import { expect, test } from "vitest";
import { clusteredMean } from "../../../src/statistics/clusteredMean.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { summarise } from "../../../src/statistics/summary.ts";

test("clusteredMean of equal weights is the plain mean with s²/K and K − 1 degrees of freedom", () => {
  const values = [0.2, 0.5, 0.9, 0.4, 0.45];
  const { mean, sd } = summarise(values);
  const got = clusteredMean({ values, weights: [3, 3, 3, 3, 3], within: [0.01, 0.01, 0.01, 0.01, 0.01] });
  expect(got.estimate).toBeCloseTo(mean, 14);
  expect(got.variance).toBeCloseTo(sd ** 2 / 5, 14);
  expect(got.df).toBeCloseTo(4, 10);
  expect(got.tokenVariance).toBeCloseTo(0.01 / 5, 14);
});

test("clusteredMean has fewer degrees of freedom when one cluster outweighs the rest", () => {
  const values = [0.2, 0.5, 0.9, 0.4, 0.45];
  const got = clusteredMean({ values, weights: [300, 3, 3, 3, 3], within: [0, 0, 0, 0, 0] });
  expect(got.df).toBeLessThan(2.5);
});

test("clusteredMean's degrees of freedom are those of the covariance matrix written out", () => {
  const values = [0.1, 0.3, 0.35, 0.8];
  const weights = [10, 25, 5, 60];
  const within = [0.02, 0.01, 0.05, 0.003];
  const { between, df } = clusteredMean({ values, weights, within });
  const h = weights.map((w) => w / 100);
  const v = within.map((w) => w + between);
  const s = h.reduce((sum, x, k) => sum + x * x * v[k]!, 0);
  let trace = 0;
  let squares = 0;
  for (let k = 0; k < 4; k++) {
    for (let l = 0; l < 4; l++) {
      const c = (k === l ? v[k]! : 0) - h[k]! * v[k]! - h[l]! * v[l]! + s;
      const [ak, al] = [h[k]! ** 2 / (1 - h[k]!), h[l]! ** 2 / (1 - h[l]!)];
      if (k === l) trace += ak * c;
      squares += ak * al * c * c;
    }
  }
  expect(df).toBeCloseTo(trace ** 2 / squares, 10);
});

test("clusteredMean's variance and between-cluster variance are unbiased for unequal clusters", () => {
  const random = seededRandom(11);
  const sizes = [4, 10, 10, 20, 30, 150];
  const estimates: number[] = [];
  const variances: number[] = [];
  const betweens: number[] = [];
  for (let round = 0; round < 6000; round++) {
    const values = sizes.map((n) => 2 * random.normal() + random.normal() * Math.sqrt(9 / n));
    const got = clusteredMean({ values, weights: sizes, within: sizes.map((n) => 9 / n) });
    estimates.push(got.estimate);
    variances.push(got.variance);
    betweens.push(got.between);
  }
  const truth = summarise(estimates).sd ** 2;
  expect(summarise(variances).mean / truth).toBeGreaterThan(0.9);
  expect(summarise(variances).mean / truth).toBeLessThan(1.1);
  expect(Math.abs(summarise(betweens).mean / 4 - 1)).toBeLessThan(0.15);
});
