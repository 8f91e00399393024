import { expect, test } from "vitest";
import { quantile } from "../../../src/signals/quantile.ts";

test("quantile interpolates between order statistics (type 7: of 1, 2, 3, 4 the quartile is 1.75)", () => {
  expect(quantile([4, 1, 3, 2], 0.25)).toBe(1.75);
  expect(quantile([4, 1, 3, 2], 0.5)).toBe(2.5);
  expect(quantile([7], 0.9)).toBe(7);
});

test("quantile leaves NaN out, is NaN for nothing, and does not change its input", () => {
  const values = Float32Array.of(3, Number.NaN, 1);
  expect(quantile(values, 0.5)).toBe(2);
  expect(values[0]).toBe(3);
  expect(quantile([], 0.5)).toBeNaN();
});
