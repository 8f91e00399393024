import { expect, test } from "vitest";
import { compensatedDot } from "../../../../src/statistics/linearAlgebra/compensatedDot.ts";

test("compensatedDot keeps what plain summation cancels away", () => {
  const a = Float64Array.of(1e16, 1, -1e16, 2 ** -40);
  const b = Float64Array.of(1, 1, 1, 1);
  expect(compensatedDot(0, a, 0, 1, b, 4)).toBe(1 + 2 ** -40);
});

test("compensatedDot carries the rounding of products", () => {
  const x = 1 + 2 ** -30;
  expect(compensatedDot(-1, Float64Array.of(x), 0, 1, Float64Array.of(x), 1)).toBe(2 ** -29 + 2 ** -60);
});

test("compensatedDot strides through a matrix row", () => {
  expect(compensatedDot(1, Float64Array.of(0, 2, 0, 3), 1, 2, Float64Array.of(5, 7), 2)).toBe(1 + 10 + 21);
});
