import { expect, test } from "vitest";
import { clusteredRate, equalWeightRate } from "../../../src/estimates/clusteredRate.ts";
import { tQuantile } from "../../../src/statistics/distributions.ts";
import { exactInterval } from "../../../src/statistics/exactInterval.ts";
import { wilsonInterval } from "../../../src/statistics/wilsonInterval.ts";

test("clusteredRate of one speaker is Wilson's interval", () => {
  expect(clusteredRate([263], [81], 0.95)).toMatchObject({
    method: "one-speaker",
    ...wilsonInterval(81, 263),
  });
});

test("clusteredRate of equal speakers is the logit t interval written out", () => {
  const devoiced = [10, 30, 22, 41, 15];
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
