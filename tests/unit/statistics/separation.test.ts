import { expect, test } from "vitest";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { areaUnderCurve, bestCut } from "../../../src/statistics/separation.ts";

const countsOf = (values: readonly number[]) => {
  const counts = new Float64Array(Math.max(...values) + 1);
  for (const value of values) counts[value]!++;
  return counts;
};

test("areaUnderCurve is the share of pairs in which the high one is higher, ties half", () => {
  const random = seededRandom(4);
  for (let round = 0; round < 100; round++) {
    const high = Array.from({ length: 1 + random.below(12) }, () => 2 + random.below(9));
    const low = Array.from({ length: 1 + random.below(12) }, () => random.below(9));
    let wins = 0;
    for (const h of high) for (const l of low) wins += h > l ? 1 : h === l ? 0.5 : 0;
    expect(areaUnderCurve(countsOf(high), countsOf(low))).toBeCloseTo(wins / (high.length * low.length), 12);
  }
});

test("areaUnderCurve is 1 for groups apart, one half for the same group, NaN for none", () => {
  expect(areaUnderCurve([0, 0, 3], [2, 1])).toBe(1);
  expect(areaUnderCurve([1, 2, 3], [1, 2, 3])).toBe(0.5);
  expect(areaUnderCurve([], [1])).toBeNaN();
});

test("bestCut finds the cut that trying every cut finds", () => {
  const random = seededRandom(8);
  for (let round = 0; round < 100; round++) {
    const high = Array.from({ length: 1 + random.below(20) }, () => 3 + random.below(12));
    const low = Array.from({ length: 1 + random.below(20) }, () => random.below(10));
    const accuracy = (cut: number) =>
      (high.filter((v) => v >= cut).length / high.length + low.filter((v) => v < cut).length / low.length) /
      2;
    const best = bestCut(countsOf(high), countsOf(low))!;
    expect(best.balancedAccuracy).toBeCloseTo(accuracy(best.cut), 12);
    for (let cut = 0; cut < 16; cut++)
      expect(best.balancedAccuracy).toBeGreaterThanOrEqual(accuracy(cut) - 1e-12);
  }
});

test("bestCut of groups apart lies half way between them", () => {
  expect(bestCut([0, 0, 0, 0, 5], [3, 1])).toEqual({
    cut: 2.5,
    highCorrect: 1,
    lowCorrect: 1,
    balancedAccuracy: 1,
  });
  expect(bestCut([], [1])).toBeNull();
});
