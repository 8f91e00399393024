import { describe, expect, test } from "vitest";
import {
  noResponseVariation,
  perfectFit,
  tooFewTokens,
  valueNotFinite,
} from "../../../../src/messages/models.ts";
import { fitLinear } from "../../../../src/statistics/models/fitLinear.ts";
import { designOf, inventTokens, okFit, toCells } from "./toyData.ts";

const line = designOf({ x: Float64Array.of(0, 1, 2) }, [{ column: "x" }]);

describe("fitLinear", () => {
  test("of three points is the closed form", () => {
    const fit = okFit(fitLinear(line, [1, 3, 4]));
    expect(fit.coefficients[1]).toBeCloseTo(1.5, 14);
    expect(fit.residualSd).toBeCloseTo(Math.sqrt(1 / 6), 14);
    expect(fit.rSquared).toBeCloseTo(1 - 1 / 6 / (14 / 3), 14);
  });

  test("with weights is the weighted closed form", () => {
    const fit = okFit(fitLinear(line, [1, 3, 4], { weights: [1, 2, 1] }));
    const [meanX, meanY] = [1, (1 + 6 + 4) / 4];
    const slope = (1 * (0 - meanX) * (1 - meanY) + 1 * (2 - meanX) * (4 - meanY)) / 2;
    expect(fit.coefficients[1]).toBeCloseTo(slope, 14);
    expect(fit.coefficients[0]).toBeCloseTo(meanY - slope * meanX, 14);
  });

  test("cells with their sums of squares give the same as tokens", () => {
    const tokens = inventTokens(1);
    const cells = toCells(tokens);
    const one = okFit(fitLinear(designOf(tokens.columns, tokens.terms), tokens.logMs));
    const options = { tokens: cells.tokens, withinSumOfSquares: cells.within };
    const other = okFit(fitLinear(designOf(cells.columns, tokens.terms), cells.means, options));
    for (const [j, value] of one.coefficients.entries()) expect(other.coefficients[j]).toBeCloseTo(value, 11);
    for (const [at, value] of one.covariance.entries()) expect(other.covariance[at]).toBeCloseTo(value, 13);
    expect(other.rSquared).toBeCloseTo(one.rSquared, 11);
    expect(other.residualDf).toBe(one.residualDf);
  });

  test.each([
    ["all durations equal", [30, 30, 30], {}, noResponseVariation(30)],
    ["NaN", [1, Number.NaN, 3], {}, valueNotFinite("The value", 1, Number.NaN)],
    ["a perfect line", [1, 3, 5], {}, perfectFit()],
    ["a weight of 0", [1, 3, 4], { weights: [1, 0, 1] }, valueNotFinite("The weight (above 0)", 1, 0)],
    [
      "negative squares",
      [1, 3, 4],
      { withinSumOfSquares: [0, -1, 0] },
      valueNotFinite("The sum of squares within (0 or more)", 1, -1),
    ],
  ])("%s: cannot be estimated, and says why", (_, response, options, reason) => {
    expect(fitLinear(line, response, options)).toEqual({
      status: "cannot be estimated",
      reason,
      notices: [],
    });
  });

  test("two points cannot judge a line", () => {
    const design = designOf({ x: Float64Array.of(0, 1) }, [{ column: "x" }]);
    expect(fitLinear(design, [1, 2])).toMatchObject({ reason: tooFewTokens(2, 2) });
  });
});
