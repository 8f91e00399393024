import { describe, expect, test } from "vitest";
import { clusteredCovariance } from "../../../src/statistics/models/clusteredCovariance.ts";
import { fitLogistic } from "../../../src/statistics/models/fitLogistic.ts";
import { marginalEffects } from "../../../src/statistics/models/marginalEffects.ts";
import { twoWayCovariance } from "../../../src/statistics/models/twoWayCovariance.ts";
import {
  designOf,
  expectDigits,
  okFit,
  readExpected,
  readTokens,
  type Shape,
  shapes,
  standardErrors,
} from "./readFixture.ts";

// Outside values: R's glm, sandwich::vcovCL, clubSandwich::vcovCR and brglm2, by make.R; versions in fixtures/versions.json.

/** The separated data set is compared without its separated level, as in make.R. */
const tokensOf = (shape: Shape) => readTokens(shape, (row) => shape !== "separated" || row.c1 !== "t");

describe.each(shapes)("fitLogistic(%s)", (shape) => {
  const tokens = tokensOf(shape);
  const expected = readExpected(shape).logistic;
  const fit = okFit(fitLogistic(designOf(tokens), tokens.devoiced, tokens.ones));
  const { codes } = tokens.columns.speaker;

  test("has R's coefficients, errors and likelihood to 6 digits", () => {
    expectDigits(fit.coefficients, expected.coefficients, 6);
    expectDigits(standardErrors(fit.covariance), expected.standardErrors.model, 6);
    expect(fit.logLikelihood).toBeCloseTo(expected.logLikelihood, 6);
  });

  test.each(["CR0", "CR1", "CR1S", "CR2"] as const)(
    "clustered by speaker, %s: R's errors to 6 digits",
    (correction) => {
      const { covariance } = okFit(clusteredCovariance(fit, codes, correction));
      expectDigits(standardErrors(covariance), expected.standardErrors[correction], 6);
    },
  );

  test("twoWayCovariance by speaker and word: sandwich's errors to 6 digits", () => {
    const { covariance } = okFit(
      twoWayCovariance(fit, { first: codes, second: tokens.columns.word.codes, correction: "CR1" }),
    );
    expectDigits(standardErrors(covariance), expected.standardErrors.twoWay, 6);
  });

  // clubSandwich takes another square root for a glm, which depends on the grouping of tokens; both are unbiased.
  test("CR2 lies within half a percent of clubSandwich's for the glm itself", () => {
    const { covariance } = okFit(clusteredCovariance(fit, codes, "CR2"));
    for (const [j, truth] of Object.values<number>(expected.standardErrors.CR2OfGlm).entries())
      expect(Math.abs(standardErrors(covariance)[j]! / truth - 1)).toBeLessThan(0.005);
  });

  test("CR2 has clubSandwich's Satterthwaite degrees of freedom to 5 digits", () => {
    const { degreesOfFreedom } = okFit(clusteredCovariance(fit, codes, "CR2"));
    const k = fit.coefficients.length;
    const df = Array.from({ length: k }, (_, j) =>
      degreesOfFreedom(Array.from({ length: k }, (_, i) => (i === j ? 1 : 0))),
    );
    expectDigits(df, expected.satterthwaiteDf, 5);
  });

  test("marginalEffects has the percentage points and delta-method errors of numerical derivatives in R", () => {
    const { covariance } = okFit(clusteredCovariance(fit, codes, "CR1S"));
    const effects = marginalEffects(fit, covariance);
    expect(effects).toHaveLength(Object.keys(expected.marginalEffects).length);
    for (const { column, level, percentagePoints, standardError } of effects) {
      const truth = expected.marginalEffects[level === null ? column : `${column}=${level}`];
      expectDigits([percentagePoints, standardError], truth, 6);
    }
  });
});

describe("fitLogistic(separated, all levels)", () => {
  const tokens = readTokens("separated");

  test("stops and names the level", () => {
    const outcome = fitLogistic(designOf(tokens), tokens.devoiced, tokens.ones);
    expect(outcome.status).toBe("cannot be estimated");
    expect(outcome).toHaveProperty("reason", expect.stringContaining("c1=t: none of its 163 tokens"));
  });

  test("onSeparation firth: brglm2's coefficients and errors to 6 digits, and a notice", () => {
    const outcome = fitLogistic(designOf(tokens), tokens.devoiced, tokens.ones, { onSeparation: "firth" });
    const { firth } = readExpected("separated");
    expectDigits(okFit(outcome).coefficients, firth.coefficients, 6);
    expectDigits(standardErrors(okFit(outcome).covariance), firth.standardErrors, 6);
    expect(outcome.notices.join()).toContain("c1=t");
  });
});
