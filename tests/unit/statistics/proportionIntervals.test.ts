import { describe, expect, test } from "vitest";
import { exactInterval } from "../../../src/statistics/exactInterval.ts";
import { wilsonContinuityInterval, wilsonInterval } from "../../../src/statistics/wilsonInterval.ts";

// 81/263 Wilson as printed by Newcombe R. G. (1998) Stat. Med. 17:857–872, Table I; 0/8 and 8/8 and the lows of 7/20
// as printed in other references; 7/50 exact as printed in SciPy's documentation of binomtest; further digits worked
// out from the closed formulas in exact arithmetic: the low of 7/20, printed as .1812, is .18119184, so that a seventh
// digit of 9, as some lists give it, is not what the formula says. Rows: k, n, Wilson, Wilson with continuity correction, exact.
type Pair = readonly [number, number] | null;
const table: readonly (readonly [number, number, Pair, Pair, Pair])[] = [
  [81, 263, [0.2552885, 0.3662096], [0.2535087, 0.3681762], [0.2527367, 0.3676219]],
  [15, 148, [0.0623864, 0.1604872], [0.0597782, 0.1644498], [0.057844, 0.1616505]],
  [0, 20, [0, 0.1611252], [0, 0.2004533], [0, 0.1684335]],
  [1, 29, [0.0061132, 0.1717552], [0.0018026, 0.1962818], [0.0008726, 0.1776443]],
  [0, 8, [0, 0.3244076], null, [0, 0.3694166]],
  [8, 8, [0.6755924, 1], null, [0.6305834, 1]],
  [7, 50, [0.0695083, 0.2618619], [0.0627701, 0.2735638], [0.0581917003403721, 0.2673960025]],
  [7, 20, [0.1811918, 0.5671457], null, [0.1539092, 0.5921885]],
];

describe.each(table)("%i of %i", (k, n, wilson, continuity, exact) => {
  const methods = [
    ["wilsonInterval", wilsonInterval, wilson],
    ["wilsonContinuityInterval", wilsonContinuityInterval, continuity],
    ["exactInterval", exactInterval, exact],
  ] as const;
  for (const [name, method, published] of methods) {
    if (published === null) continue;
    test(`${name} gives the published bounds to seven digits`, () => {
      const { low, high } = method(k, n);
      expect(Math.abs(low - published[0])).toBeLessThanOrEqual(5.1e-8);
      expect(Math.abs(high - published[1])).toBeLessThanOrEqual(5.1e-8);
    });
  }
});

test("exactInterval(7, 50) agrees with SciPy to ten digits", () => {
  expect(exactInterval(7, 50).low).toBeCloseTo(0.0581917003403721, 12);
  expect(exactInterval(7, 50).high).toBeCloseTo(0.26739600249700846, 10);
});

test("wilsonInterval(0, n) starts at exactly 0 and wilsonInterval(n, n) ends at exactly 1 for every n", () => {
  for (let n = 1; n < 400; n++) {
    for (const method of [wilsonInterval, wilsonContinuityInterval, exactInterval]) {
      expect(method(0, n).low).toBe(0);
      expect(method(n, n).high).toBe(1);
      expect(method(0, n).high).toBeCloseTo(1 - method(n, n).low, 12);
    }
  }
});

test("every proportion interval holds its estimate, lies in [0, 1] and widens with the level", () => {
  for (const n of [1, 2, 7, 60]) {
    for (let k = 0; k <= n; k++) {
      for (const method of [wilsonInterval, wilsonContinuityInterval, exactInterval]) {
        const narrow = method(k, n, 0.8);
        const wide = method(k, n, 0.99);
        expect(wide.low).toBeGreaterThanOrEqual(0);
        expect(wide.low).toBeLessThanOrEqual(narrow.low);
        expect(narrow.low).toBeLessThanOrEqual(k / n);
        expect(narrow.high).toBeGreaterThanOrEqual(k / n);
        expect(wide.high).toBeGreaterThanOrEqual(narrow.high);
        expect(wide.high).toBeLessThanOrEqual(1);
      }
    }
  }
});
