import { expect, test } from "vitest";
import {
  deltaRatioError,
  deltaRatioInterval,
  fiellerInterval,
  type MeanPair,
} from "../../../src/statistics/ratioOfMeans.ts";

// Worked example: a = 160 (standard error 5), b = 70 (3), covariance 0; values worked out from
// Fieller E. C. (1954) JRSS-B 16:175–185 and the first-order Taylor expansion.
const z = 1.959963984540054;
const pair: MeanPair = {
  numerator: 160,
  denominator: 70,
  numeratorVariance: 25,
  denominatorVariance: 9,
  covariance: 0,
};

test("deltaRatioInterval gives the worked example", () => {
  expect(deltaRatioError(pair)).toBeCloseTo(0.1212355, 7);
  expect(deltaRatioInterval(pair, z).low).toBeCloseTo(2.0480971, 7);
  expect(deltaRatioInterval(pair, z).high).toBeCloseTo(2.5233315, 7);
});

test("fiellerInterval gives the worked example", () => {
  const { low, high, g } = fiellerInterval(pair, z);
  expect(low).toBeCloseTo(2.0629439, 7);
  expect(high).toBeCloseTo(2.5409687, 7);
  expect(g).toBeCloseTo((z * z * 9) / 4900, 12);
});

test("fiellerInterval has bounds where (a − rb)² equals z² times its variance, with covariance too", () => {
  const correlated = { ...pair, covariance: 6 };
  const { low, high } = fiellerInterval(correlated, z);
  for (const r of [low!, high!]) {
    const variance = 25 - 2 * r * 6 + r * r * 9;
    expect((160 - r * 70) ** 2).toBeCloseTo(z * z * variance, 8);
  }
});

test("fiellerInterval is null when the denominator may be zero, and delta-like when it is certain", () => {
  expect(fiellerInterval({ ...pair, denominatorVariance: 70 ** 2 }, z)).toMatchObject({
    low: null,
    high: null,
  });
  const certain = { ...pair, denominatorVariance: 0 };
  expect(fiellerInterval(certain, z).low).toBeCloseTo(deltaRatioInterval(certain, z).low, 12);
});
