import { expect, test } from "vitest";
import { averagedChances } from "../../../../src/statistics/models/averagedChances.ts";
import { fitLogistic } from "../../../../src/statistics/models/fitLogistic.ts";
import { type FittedRates, marginalEffects } from "../../../../src/statistics/models/marginalEffects.ts";
import { designOf, inventTokens, labelled, okFit } from "./toyData.ts";

test("marginalEffects of two groups is the difference of rates with its classical error", () => {
  const design = designOf({ g: labelled(["p", "q"]) }, [{ column: "g" }]);
  const fit = okFit(fitLogistic(design, [10, 30], [40, 50]));
  const [effect] = marginalEffects(fit, fit.covariance);
  expect(effect).toMatchObject({ column: "g", level: "q", reference: "p" });
  expect(effect!.percentagePoints).toBeCloseTo(35, 9);
  const error = 100 * Math.sqrt((0.25 * 0.75) / 40 + (0.6 * 0.4) / 50);
  expect(effect!.standardError).toBeCloseTo(error, 9);
  expect(effect!.high - effect!.low).toBeCloseTo(2 * 1.959963984540054 * error, 8);
});

test("marginalEffects with interactions equals numerical derivatives, with and without spread of intercepts", () => {
  const { columns, devoiced, ones } = inventTokens(4);
  const terms = [{ column: "vowel" }, { column: "rate" }, { interaction: ["vowel", "rate"] }];
  const design = designOf(columns, terms);
  const fit = okFit(fitLogistic(design, devoiced, ones));
  for (const groupings of [[], [{ variance: 0.8 }, { variance: 0.5 }]]) {
    const sd = Math.sqrt(groupings.reduce((sum, { variance }) => sum + variance, 0));
    const at = (b: Float64Array): number[] => {
      const mean = (eta: (i: number) => number) =>
        averagedChances(
          ones.map((_, i) => eta(i)),
          sd,
        ).chance.reduce((s, p) => s + p / ones.length, 0);
      const eta = (level: number, rate: number) => b[0]! + level * b[1]! + rate * (b[2]! + level * b[3]!);
      const rates = columns.rate;
      const own = (i: number) => columns.vowel.codes[i]!;
      const h = 1e-4;
      return [
        100 * (mean((i) => eta(1, rates[i]!)) - mean((i) => eta(0, rates[i]!))),
        (100 * (mean((i) => eta(own(i), rates[i]! + h)) - mean((i) => eta(own(i), rates[i]! - h)))) / (2 * h),
      ];
    };
    const rated: FittedRates = { ...fit, groupings };
    const effects = marginalEffects(rated, fit.covariance);
    const truth = at(fit.coefficients);
    for (const [e, effect] of effects.entries()) {
      expect(effect.percentagePoints).toBeCloseTo(truth[e]!, 5);
      const gradient = fit.coefficients.map((_, j) => {
        const [up, down] = [1e-4, -1e-4].map(
          (step) => at(fit.coefficients.map((b, k) => (k === j ? b + step : b)))[e]!,
        );
        return (up! - down!) / 2e-4;
      });
      let variance = 0;
      for (const [a, g] of gradient.entries())
        for (const [b, h] of gradient.entries()) variance += g * h * fit.covariance[a * 4 + b]!;
      expect(effect.standardError).toBeCloseTo(Math.sqrt(variance), 4);
    }
  }
});

test("averagedChances without spread is the logistic function; with spread it moves towards one half", () => {
  const plain = averagedChances(Float64Array.of(-2, 0, 3), 0);
  expect(plain.chance[0]).toBeCloseTo(1 / (1 + Math.exp(2)), 15);
  expect(plain.slope[1]).toBeCloseTo(0.25, 15);
  const spread = averagedChances(Float64Array.of(-2, 0, 3), 1.5);
  expect(spread.chance[1]).toBeCloseTo(0.5, 14);
  expect(spread.chance[0]).toBeGreaterThan(plain.chance[0]!);
  expect(spread.chance[2]).toBeLessThan(plain.chance[2]!);
});
