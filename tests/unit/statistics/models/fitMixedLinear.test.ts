import { describe, expect, test } from "vitest";
import {
  noResponseVariation,
  noVariation,
  oneGroup,
  perfectFit,
  valueNotFinite,
} from "../../../../src/messages/models.ts";
import { fitLinear } from "../../../../src/statistics/models/fitLinear.ts";
import { fitMixedLinear } from "../../../../src/statistics/models/fitMixedLinear.ts";
import { designOf, inventTokens, labelled, okFit, toCells } from "./toyData.ts";

const invented = inventTokens(9);
const { columns, logMs, terms } = invented;
const { speaker, word } = columns;
const design = designOf(columns, terms);

describe("fitMixedLinear", () => {
  // Balanced one-way layout: REML equals the analysis of variance (between mean square − within) / size.
  test("REML of balanced groups is the classical variance component", () => {
    const values = [1, 2, 3, 5, 6, 7, 4, 4, 7];
    const group = labelled([..."aaabbbccc"]);
    const fit = okFit(
      fitMixedLinear(
        designOf({}, [], { counts: values.map(() => 1) }),
        values,
        { group },
        { method: "REML" },
      ),
    );
    const within = (2 + 2 + 6) / 6;
    const mean = 39 / 9;
    const between = (3 * ((2 - mean) ** 2 + (6 - mean) ** 2 + (5 - mean) ** 2)) / 2;
    expect(fit.residualVariance).toBeCloseTo(within, 5);
    expect(fit.groupings[0]!.variance).toBeCloseTo((between - within) / 3, 4);
    expect(fit.coefficients[0]).toBeCloseTo(mean, 10);
    expect(fit.covariance[0]).toBeCloseTo(between / 9, 5);
  });

  test("cells with their sums of squares give the same as tokens", () => {
    const cells = toCells(invented);
    const one = okFit(fitMixedLinear(design, logMs, { speaker, word }));
    const own = { speaker: cells.columns.speaker, word: cells.columns.word };
    const options = { tokens: cells.tokens, withinSumOfSquares: cells.within };
    const other = okFit(fitMixedLinear(designOf(cells.columns, terms), cells.means, own, options));
    for (const [j, value] of one.coefficients.entries()) expect(other.coefficients[j]).toBeCloseTo(value, 8);
    for (const [g, { variance }] of one.groupings.entries())
      expect(other.groupings[g]!.variance).toBeCloseTo(variance, 8);
    expect(other.residualVariance).toBeCloseTo(one.residualVariance, 9);
    expect(other.logLikelihood).toBeCloseTo(one.logLikelihood, 8);
  });

  test("a constant added to every duration moves the intercept alone", () => {
    const one = okFit(fitMixedLinear(design, logMs, { speaker, word }));
    const other = okFit(
      fitMixedLinear(
        design,
        logMs.map((value) => value + 1000),
        { speaker, word },
      ),
    );
    expect(other.coefficients[0]).toBeCloseTo(one.coefficients[0]! + 1000, 8);
    expect(other.coefficients[1]).toBeCloseTo(one.coefficients[1]!, 8);
    expect(other.logLikelihood).toBeCloseTo(one.logLikelihood, 6);
  });

  test("groups without differences: variance zero, least squares, and says so", () => {
    const paired = logMs.map((value, i) => (i % 2 === 0 ? value : 8 - logMs[i - 1]!));
    const pairs = labelled(Array.from(logMs, (_, i) => `g${Math.floor(i / 2) % 20}`));
    const empty = designOf({}, [], { counts: new Float64Array(600).fill(1) });
    const outcome = fitMixedLinear(empty, paired, { pair: pairs });
    expect(outcome.notices).toEqual([noVariation("pair")]);
    expect(okFit(outcome).groupings[0]!.variance).toBeLessThan(1e-7);
    expect(okFit(outcome).coefficients[0]).toBeCloseTo(okFit(fitLinear(empty, paired)).coefficients[0]!, 10);
  });

  test.each([
    ["all durations equal", logMs.map(() => 30), { speaker }, noResponseVariation(30)],
    [
      "NaN",
      logMs.map((value, i) => (i === 4 ? Number.NaN : value)),
      { speaker },
      valueNotFinite("The value", 4, Number.NaN),
    ],
    ["one word", logMs, { word: labelled(Array.from(logMs, () => "hito")) }, oneGroup("word", "hito")],
    ["speakers that say all", logMs.map((_, i) => speaker.codes[i]! / 3), { speaker }, perfectFit()],
  ])("%s: cannot be estimated, and says why", (_, response, intercepts, reason) => {
    expect(fitMixedLinear(design, response, intercepts)).toMatchObject({
      status: "cannot be estimated",
      reason,
    });
  });
});
