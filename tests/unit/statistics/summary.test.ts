import { expect, test } from "vitest";
import { compensatedSum, summarise, varianceFromSums } from "../../../src/statistics/summary.ts";

test("compensatedSum keeps what plain addition loses", () => {
  expect(compensatedSum([1, 1e100, 1, -1e100])).toBe(2);
});

// NIST StRD NumAcc1: certified mean 10000002, standard deviation 1.
test("summarise keeps the certified values of three numbers that differ in the last digit", () => {
  expect(summarise([10000001, 10000003, 10000002])).toEqual({ n: 3, mean: 10000002, sd: 1 });
});

test("summarise of none and one says NaN where nothing can be said", () => {
  expect(summarise([])).toEqual({ n: 0, mean: Number.NaN, sd: Number.NaN });
  expect(summarise([4])).toEqual({ n: 1, mean: 4, sd: Number.NaN });
});

test("varianceFromSums agrees with summarise and is never below 0", () => {
  const values = [3.1, 4.7, 4.9, 8.8];
  const sum = compensatedSum(values);
  const squares = compensatedSum(values.map((v) => v * v));
  expect(varianceFromSums(4, sum, squares)).toBeCloseTo(summarise(values).sd ** 2, 12);
  expect(varianceFromSums(3, 0.3, 0.03 - 1e-18)).toBeGreaterThanOrEqual(0);
  expect(varianceFromSums(1, 2, 4)).toBeNaN();
});
