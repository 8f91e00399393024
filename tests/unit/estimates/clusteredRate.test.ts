import { expect, test } from "vitest";
import { clusteredRate, equalWeightRate } from "../../../src/estimates/clusteredRate.ts";
import { clusteredMean } from "../../../src/statistics/clusteredMean.ts";
import { tQuantile } from "../../../src/statistics/distributions.ts";
import { exactInterval } from "../../../src/statistics/exactInterval.ts";
import { skewedInterval } from "../../../src/statistics/skewedInterval.ts";
import { wilsonInterval } from "../../../src/statistics/wilsonInterval.ts";

test("clusteredRate of one speaker is Wilson's interval", () => {
  expect(clusteredRate([263], [81], 0.95)).toMatchObject({
    method: "one-speaker",
    ...wilsonInterval(81, 263),
  });
});

test("clusteredRate reaches further to the middle where a few speakers show most of a rare outcome", () => {
  const marked = Array.from({ length: 20 }, () => 100);
  const few = marked.map((_, k) => (k < 2 ? 20 : k < 12 ? 1 : 0));
  const got = clusteredRate(marked, few, 0.95);
  const { variance, df, skewness } = clusteredMean({
    ...{ values: few.map((d) => d / 100), weights: marked },
    within: marked.map(() => (0.025 * 0.975) / 100),
  });
  const multiplier = tQuantile(0.975, df);
  const standardError = Math.sqrt(variance);
  expect(got.estimate).toBeCloseTo(0.025, 12);
  expect(got.high).toBeCloseTo(skewedInterval(0.025, { standardError, multiplier, skewness }).high, 12);
  const mirrored = clusteredRate(
    marked,
    few.map((d) => 100 - d),
    0.95,
  );
  expect([1 - mirrored.high, 1 - mirrored.low]).toEqual([
    expect.closeTo(got.low, 12),
    expect.closeTo(got.high, 12),
  ]);
});

test("clusteredRate of equal speakers is the logit t interval written out", () => {
  const devoiced = [5, 10, 12, 9, 14];
  const shares = devoiced.map((d) => d / 50);
  const p = shares.reduce((a, b) => a + b) / 5;
  const variance = shares.reduce((sum, x) => sum + (x - p) ** 2, 0) / 4 / 5;
  const half = (tQuantile(0.975, 4) * Math.sqrt(variance)) / (p * (1 - p));
  const logit = Math.log(p / (1 - p));
  const got = clusteredRate([50, 50, 50, 50, 50], devoiced, 0.95);
  expect(got.estimate).toBeCloseTo(p, 12);
  expect(got.low).toBeCloseTo(1 / (1 + Math.exp(half - logit)), 10);
  expect(got.high).toBeCloseTo(1 / (1 + Math.exp(-half - logit)), 10);
});

test("clusteredRate is never narrower than for independent tokens, however alike the speakers", () => {
  const got = clusteredRate([40, 40, 40], [20, 20, 20], 0.95);
  expect({ low: got.low, high: got.high }).toEqual(wilsonInterval(60, 120));
});

test("clusteredRate of none or all is one-sided, mirrored, and wider than for independent tokens", () => {
  const none = clusteredRate([40, 60, 50], [0, 0, 0], 0.95);
  const all = clusteredRate([40, 60, 50], [40, 60, 50], 0.95);
  expect(none).toMatchObject({ estimate: 0, low: 0, method: "all-or-none" });
  expect(all).toMatchObject({ estimate: 1, high: 1, method: "all-or-none" });
  expect(none.high).toBeCloseTo(1 - all.low, 12);
  expect(none.high).toBeGreaterThan(exactInterval(0, 150).high);
});

test("clusteredRate does not change when speakers change places, and mirrors when outcomes do", () => {
  const a = clusteredRate([10, 20, 70, 33], [1, 9, 20, 30], 0.9);
  const b = clusteredRate([70, 33, 10, 20], [20, 30, 1, 9], 0.9);
  const mirrored = clusteredRate([10, 20, 70, 33], [9, 11, 50, 3], 0.9);
  expect(b.low).toBeCloseTo(a.low, 12);
  expect(mirrored.high).toBeCloseTo(1 - a.low, 12);
});

test("equalWeightRate counts each speaker the same and is null for one", () => {
  expect(equalWeightRate([10, 1000], [5, 900], 0.95)?.estimate).toBeCloseTo(0.7, 12);
  expect(equalWeightRate([10], [5], 0.95)).toBeNull();
});
