import { expect, test } from "vitest";
import { histogramQuantile } from "../../../src/statistics/histogramQuantile.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

test("histogramQuantile(counts, 0.5) is the median of the values counted", () => {
  const random = seededRandom(7);
  for (let round = 0; round < 300; round++) {
    const values = Array.from({ length: 1 + random.below(9) }, () => random.below(12));
    const counts = new Uint32Array(12);
    for (const value of values) counts[value]!++;
    expect(histogramQuantile(counts, 0.5)).toBe(medianOf(values));
  }
});

test("histogramQuantile does not depend on the scale of the weights", () => {
  const counts = [0, 3, 0, 1, 2];
  const scaled = counts.map((c) => c / 7);
  for (const p of [0.1, 0.5, 0.51, 0.9, 1])
    expect(histogramQuantile(scaled, p)).toBe(histogramQuantile(counts, p));
});

test("histogramQuantile of nothing is NaN", () => {
  expect(histogramQuantile([0, 0], 0.5)).toBeNaN();
});
