import { expect, test } from "vitest";
import { clusterBootstrap } from "../../../src/statistics/bootstrap.ts";
import { tMultiplier } from "../../../src/statistics/distributions.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { summarise } from "../../../src/statistics/summary.ts";

const weightedMean = (values: readonly number[]) => (times: Float64Array) => {
  let sum = 0;
  let n = 0;
  for (let k = 0; k < values.length; k++) {
    sum += times[k]! * values[k]!;
    n += times[k]!;
  }
  return sum / n;
};

test("clusterBootstrap of a mean of many clusters is close to the t interval", () => {
  const random = seededRandom(2);
  const values = Array.from({ length: 80 }, () => 10 + 3 * random.normal());
  const { mean, sd } = summarise(values);
  const half = (tMultiplier(0.95, 79) * sd) / Math.sqrt(80);
  const got = clusterBootstrap(80, weightedMean(values), { level: 0.95, random: seededRandom(1) })!;
  expect(Math.abs(got.low - (mean - half))).toBeLessThan(0.1 * half);
  expect(Math.abs(got.high - (mean + half))).toBeLessThan(0.1 * half);
});

test("clusterBootstrap leans to the long side of a skewed statistic", () => {
  const random = seededRandom(3);
  const values = Array.from({ length: 30 }, () => Math.exp(random.normal()));
  const { mean } = summarise(values);
  const { low, high } = clusterBootstrap(30, weightedMean(values), { level: 0.95, random: seededRandom(1) })!;
  expect(high - mean).toBeGreaterThan(1.2 * (mean - low));
});

test("clusterBootstrap repeats itself, and is null for two clusters or a statistic without meaning", () => {
  const options = () => ({ level: 0.9, random: seededRandom(5) });
  const statistic = weightedMean([1, 2, 5, 4]);
  expect(clusterBootstrap(4, statistic, options())).toEqual(clusterBootstrap(4, statistic, options()));
  expect(clusterBootstrap(2, statistic, options())).toBeNull();
  expect(clusterBootstrap(4, () => Number.NaN, options())).toBeNull();
});
