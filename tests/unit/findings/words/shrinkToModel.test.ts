import { expect, test } from "vitest";
import { modelStrength, shrinkToModel } from "../../../../src/findings/words/shrinkToModel.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

test("modelStrength is large where environments keep to the model and small where they leave it", () => {
  const random = seededRandom(1);
  const cells = (spread: number) =>
    Array.from({ length: 40 }, () => {
      const expected = 0.3 + 0.4 * random.uniform();
      const odds = Math.log(expected / (1 - expected)) + spread * random.normal();
      return { tokens: 100, devoiced: random.binomial(100, 1 / (1 + Math.exp(-odds))), expected };
    });
  expect(modelStrength(cells(0))).toBeGreaterThanOrEqual(250);
  expect(modelStrength(cells(1.5))).toBe(10);
});

test("shrinkToModel(model, own, n, m) is the model for n = 0, half way for n = m, and stays within 0 and 1", () => {
  const model = { estimate: 0.8, low: 0.6, high: 0.9 };
  const own = { estimate: 0, low: 0, high: 0.3 };
  expect(shrinkToModel(model, own, 0, 20)).toEqual(model);
  const half = shrinkToModel(model, own, 20, 20);
  expect(half.estimate).toBeCloseTo(0.4, 12);
  expect([half.low, half.high]).toEqual([0.3, 0.6]);
  expect(shrinkToModel(model, own, 1e9, 20).estimate).toBeCloseTo(0, 6);
});
