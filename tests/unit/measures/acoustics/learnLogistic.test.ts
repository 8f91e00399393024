import { expect, test } from "vitest";
import { learnLogistic } from "../../../../src/measures/acoustics/learnLogistic.ts";
import { logistic, logOdds } from "../../../../src/measures/acoustics/logistic.ts";

const none = { weights: [0], bias: 0 };

test("learnLogistic without rows gives the prior back", () => {
  const prior = { weights: [1.5, -2], bias: 0.3 };
  const learnt = learnLogistic({ x: [], y: [], weight: [] }, prior, 1);
  expect(learnt.bias).toBeCloseTo(0.3, 9);
  expect(learnt.weights[1]).toBeCloseTo(-2, 9);
});

test("learnLogistic gives the log odds ratio of a fourfold table when the prior pulls not at all (closed form)", () => {
  // x = 1: 30 of 40; x = 0: 10 of 50.
  const x = [1, 1, 0, 0];
  const y = [1, 0, 1, 0];
  const { weights, bias } = learnLogistic({ x, y, weight: [30, 10, 10, 40] }, none, 0);
  expect(bias).toBeCloseTo(Math.log(10 / 40), 6);
  expect(weights[0]).toBeCloseTo(Math.log(30 / 10 / (10 / 40)), 6);
});

test("learnLogistic stays finite for classes that separate, and the pull decides how far it goes", () => {
  const data = { x: [-2, -1, 1, 2], y: [0, 0, 1, 1], weight: [1, 1, 1, 1] };
  const weak = learnLogistic(data, none, 0.1).weights[0]!;
  const strong = learnLogistic(data, none, 10).weights[0]!;
  expect(Number.isFinite(weak)).toBe(true);
  expect(weak).toBeGreaterThan(strong);
  expect(strong).toBeGreaterThan(0);
});

test("learnLogistic gives the same for a weight of 2 as for a row written twice", () => {
  const twice = learnLogistic({ x: [1, 1, 0, 2], y: [1, 1, 0, 0], weight: [1, 1, 1, 1] }, none, 1);
  const heavy = learnLogistic({ x: [1, 0, 2], y: [1, 0, 0], weight: [2, 1, 1] }, none, 1);
  expect(heavy.weights[0]).toBeCloseTo(twice.weights[0]!, 9);
});

test("logistic and logOdds agree with each other at the ends", () => {
  expect(logistic(0)).toBe(0.5);
  expect(logistic(800)).toBe(1);
  expect(logistic(-800)).toBe(0);
  expect(logOdds({ weights: [2, 1], bias: -1 }, [9, 3, 4], 1)).toBe(2 * 3 + 4 - 1);
});
