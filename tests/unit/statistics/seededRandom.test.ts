import { expect, test } from "vitest";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { summarise } from "../../../src/statistics/summary.ts";

test("seededRandom(seed) repeats itself and differs between seeds", () => {
  const draw = (seed: number) => {
    const random = seededRandom(seed);
    return [random.uniform(), random.normal(), random.below(1000), random.binomial(50, 0.3)];
  };
  expect(draw(1)).toEqual(draw(1));
  expect(draw(1)).not.toEqual(draw(2));
});

test("seededRandom's draws have the moments of their distributions", () => {
  const random = seededRandom(3);
  const uniform = summarise(Array.from({ length: 20000 }, () => random.uniform()));
  const normal = summarise(Array.from({ length: 20000 }, () => random.normal()));
  const binomial = summarise(Array.from({ length: 20000 }, () => random.binomial(10, 0.3)));
  expect(Math.abs(uniform.mean - 0.5)).toBeLessThan(0.01);
  expect(Math.abs(uniform.sd - Math.sqrt(1 / 12))).toBeLessThan(0.01);
  expect(Math.abs(normal.mean)).toBeLessThan(0.03);
  expect(Math.abs(normal.sd - 1)).toBeLessThan(0.03);
  expect(Math.abs(binomial.mean - 3)).toBeLessThan(0.05);
  expect(Math.abs(binomial.sd - Math.sqrt(2.1))).toBeLessThan(0.05);
});
