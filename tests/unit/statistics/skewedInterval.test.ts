import { expect, test } from "vitest";
import { skewedInterval } from "../../../src/statistics/skewedInterval.ts";

const options = { standardError: 0.1, multiplier: 2 };

test("skewedInterval without skewness is the plain interval, and near it for hardly any", () => {
  expect(skewedInterval(1, { ...options, skewness: 0 })).toEqual({ low: 0.8, high: 1.2 });
  const hardly = skewedInterval(1, { ...options, skewness: 1e-6 });
  expect(hardly.low).toBeCloseTo(0.8, 6);
  expect(hardly.high).toBeCloseTo(1.2, 6);
});

test("skewedInterval undoes Hall's cubic: its bounds are where the transformed t is ± the multiplier", () => {
  const skewness = 0.4;
  const { low, high } = skewedInterval(1, { ...options, skewness });
  const transformed = (truth: number) => {
    const t = (1 - truth) / options.standardError;
    return t + (skewness * t ** 2) / 3 + (skewness ** 2 * t ** 3) / 27 + skewness / 6;
  };
  expect(transformed(low)).toBeCloseTo(2, 10);
  expect(transformed(high)).toBeCloseTo(-2, 10);
});

test("skewedInterval reaches further to the side of the long tail, and is its mirror image for the other", () => {
  const right = skewedInterval(1, { ...options, skewness: 0.5 });
  expect(right.high - 1).toBeGreaterThan(1 - right.low);
  const left = skewedInterval(1, { ...options, skewness: -0.5 });
  expect(left.low).toBeCloseTo(2 - right.high, 12);
});
