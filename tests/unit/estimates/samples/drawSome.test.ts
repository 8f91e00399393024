import { expect, test } from "vitest";
import { drawSome } from "../../../../src/estimates/samples/drawSome.ts";

const items = Array.from({ length: 100 }, (_, i) => i);

test("drawSome keeps so many, in order, none twice, the same for the same seed", () => {
  const drawn = drawSome(items, 30, 7);
  expect(drawn.length).toBe(30);
  expect(drawn).toEqual([...new Set(drawn)].sort((a, b) => a - b));
  expect(drawSome(items, 30, 7)).toEqual(drawn);
  expect(drawSome(items, 30, 8)).not.toEqual(drawn);
});

test("drawSome of few keeps all", () => {
  expect(drawSome([3, 1, 2], 3, 1)).toEqual([3, 1, 2]);
  expect(drawSome([], 3, 1)).toEqual([]);
});

test("drawSome draws every item alike: each about 3 in 10 times over 2,000 seeds", () => {
  const times = new Float64Array(items.length);
  for (let seed = 0; seed < 2000; seed++) for (const item of drawSome(items, 30, seed)) times[item]! += 1;
  // 600 ± 5 standard deviations of a binomial(2000, 0.3), sd 20.5
  expect(Math.min(...times)).toBeGreaterThan(497);
  expect(Math.max(...times)).toBeLessThan(703);
});
