import { expect, test } from "vitest";
import { censoredNormal } from "../../../src/statistics/censoredNormal.ts";
import { normalCdf } from "../../../src/statistics/distributions.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

function sampleOf(values: readonly number[], limit: number) {
  const observed = values.filter((x) => x > limit);
  return {
    censored: values.length - observed.length,
    limit,
    observed: observed.length,
    sum: observed.reduce((a, b) => a + b, 0),
    sumSquares: observed.reduce((a, b) => a + b * b, 0),
  };
}

const random = seededRandom(5);
const values = Array.from({ length: 40_000 }, () => 4 + 0.5 * random.normal());

test("censoredNormal finds the distribution back though half of it is censored", () => {
  const fit = censoredNormal(sampleOf(values, 4))!;
  expect(Math.abs(fit.mean - 4)).toBeLessThan(0.015);
  expect(Math.abs(fit.sd - 0.5)).toBeLessThan(0.015);
});

test("censoredNormal lies at the top of the likelihood", () => {
  const sample = sampleOf(values.slice(0, 200), 4.1);
  const logLikelihood = (mean: number, sd: number) =>
    sample.censored * Math.log(normalCdf((sample.limit - mean) / sd)) -
    sample.observed * Math.log(sd) -
    (sample.sumSquares - 2 * mean * sample.sum + sample.observed * mean * mean) / (2 * sd * sd);
  const { mean, sd } = censoredNormal(sample)!;
  const top = logLikelihood(mean, sd);
  for (const [dm, ds] of [
    [0.01, 0],
    [-0.01, 0],
    [0, 0.01],
    [0, -0.01],
  ] as const)
    expect(logLikelihood(mean + dm, sd + ds)).toBeLessThan(top);
});

test("censoredNormal with nothing censored is the plain mean and (maximum likelihood) deviation", () => {
  const fit = censoredNormal({ censored: 0, limit: 0, observed: 3, sum: 6, sumSquares: 14 })!;
  expect(fit.mean).toBeCloseTo(2, 12);
  expect(fit.sd).toBeCloseTo(Math.sqrt(2 / 3), 12);
});

test("censoredNormal is null where too little is observed", () => {
  expect(censoredNormal({ censored: 9, limit: 1, observed: 1, sum: 2, sumSquares: 4 })).toBeNull();
  expect(censoredNormal({ censored: 9, limit: 1, observed: 2, sum: 4, sumSquares: 8 })).toBeNull();
});
