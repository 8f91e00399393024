import { expect, test } from "vitest";
import { benjaminiHochberg } from "../../../src/statistics/benjaminiHochberg.ts";

// p-values of Benjamini Y. & Hochberg Y. (1995) JRSS-B 57:289–300; they reject four at q = .05.
// Adjusted values worked out by hand; R's p.adjust(method = "BH") is defined to give the same.
const published = [
  0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528,
  0.759, 1,
];
const adjusted = [
  0.0015, 0.003, 0.0095, 0.035625, 0.0603, 0.06385714, 0.06385714, 0.0645, 0.0765, 0.486, 0.58118182,
  0.714875, 0.75323077, 0.81321429, 1,
];

test("benjaminiHochberg of the authors' own example gives the known values and four rejections", () => {
  const got = benjaminiHochberg(published);
  for (const [i, value] of adjusted.entries()) expect(got[i]).toBeCloseTo(value, 8);
  expect(got.filter((p) => p <= 0.05)).toHaveLength(4);
});

test("benjaminiHochberg keeps the order given and leaves NaN out of the count", () => {
  const shuffled = [...published].reverse();
  expect(benjaminiHochberg(shuffled)).toEqual(benjaminiHochberg(published).reverse());
  expect(benjaminiHochberg([0.01, Number.NaN, 0.02])).toEqual([0.02, Number.NaN, 0.02]);
  expect(benjaminiHochberg([])).toEqual([]);
});
