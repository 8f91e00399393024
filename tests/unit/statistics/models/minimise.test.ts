import { expect, test } from "vitest";
import { minimise } from "../../../../src/statistics/models/minimise.ts";
import { minimiseWithScales } from "../../../../src/statistics/models/minimiseWithScales.ts";

test("minimise finds the bottom of Rosenbrock's valley from its usual start", () => {
  const valley = ([x, y]: Float64Array) => ({
    value: 100 * (y! - x! ** 2) ** 2 + (1 - x!) ** 2,
    gradient: Float64Array.of(-400 * x! * (y! - x! ** 2) - 2 * (1 - x!), 200 * (y! - x! ** 2)),
  });
  const found = minimise(valley, Float64Array.of(-1.2, 1), Float64Array.of(1e-3, 0, 0, 1e-3), 1e-16);
  expect(found.converged).toBe(true);
  expect(found.x[0]).toBeCloseTo(1, 7);
  expect(found.x[1]).toBeCloseTo(1, 7);
});

test("minimise says when it did not converge", () => {
  const slope = ([x]: Float64Array) => ({ value: -x!, gradient: Float64Array.of(-1) });
  const found = minimise(slope, Float64Array.of(0), Float64Array.of(1), 1e-10, 5);
  expect(found).toMatchObject({ converged: false, iterations: 5 });
});

test("minimise steps back from values that are not finite", () => {
  const wall = ([x]: Float64Array) => ({
    value: x! > 0 ? x! - Math.log(x!) : Number.POSITIVE_INFINITY,
    gradient: Float64Array.of(1 - 1 / x!),
  });
  expect(minimise(wall, Float64Array.of(0.1), Float64Array.of(10)).x[0]).toBeCloseTo(1, 4);
});

test("minimiseWithScales does not rest on the ridge at zero", () => {
  const twoValleys = ([x]: Float64Array) => ({
    value: (x! ** 2 - 1) ** 2,
    gradient: Float64Array.of(4 * x! * (x! ** 2 - 1)),
  });
  const start = Float64Array.of(0);
  expect(minimise(twoValleys, start, Float64Array.of(0.1)).x[0]).toBe(0);
  expect(Math.abs(minimiseWithScales(twoValleys, start, Float64Array.of(0.1), 1).x[0]!)).toBeCloseTo(1, 5);
});
