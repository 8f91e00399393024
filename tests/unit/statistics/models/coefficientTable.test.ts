import { expect, test } from "vitest";
import { coefficientTable, halfWidth } from "../../../../src/statistics/models/coefficientTable.ts";
import { fitLogistic } from "../../../../src/statistics/models/fitLogistic.ts";
import { designOf, labelled, okFit } from "./toyData.ts";

const design = designOf({ g: labelled(["p", "q"]) }, [{ column: "g" }]);
const fit = okFit(fitLogistic(design, [10, 30], [40, 50]));

test("coefficientTable gives the odds ratio of a 2 × 2 table with Woolf's interval", () => {
  const row = coefficientTable(fit, fit.covariance)[1]!;
  expect(row.name).toBe("g=q");
  expect(row.ratio).toBeCloseTo((30 * 30) / (20 * 10), 10);
  const error = Math.sqrt(1 / 10 + 1 / 30 + 1 / 30 + 1 / 20);
  expect(row.ratioLow).toBeCloseTo(4.5 * Math.exp(-1.959963984540054 * error), 10);
  expect(row.ratioHigh).toBeCloseTo(4.5 * Math.exp(1.959963984540054 * error), 9);
});

test("coefficientTable widens intervals with few degrees of freedom (t with 4: 2.776, printed tables)", () => {
  const row = coefficientTable(fit, fit.covariance, { degreesOfFreedom: () => 4 })[1]!;
  expect((row.high - row.estimate) / row.standardError).toBeCloseTo(2.776, 3);
});

test("halfWidth is infinite without degrees of freedom, never NaN", () => {
  expect(halfWidth(0, 0.95, 0)).toBe(Number.POSITIVE_INFINITY);
  expect(halfWidth(1, 0.95, Number.NaN)).toBe(Number.POSITIVE_INFINITY);
});
