import { describe, expect, test } from "vitest";
import { clusteredCovariance } from "../../../src/statistics/models/clusteredCovariance.ts";
import { fitLinear } from "../../../src/statistics/models/fitLinear.ts";
import {
  designOf,
  expectDigits,
  okFit,
  readExpected,
  readTokens,
  shapes,
  standardErrors,
} from "./readFixture.ts";

// Outside values: R's lm, sandwich::vcovCL and clubSandwich::vcovCR, by make.R; versions in fixtures/versions.json.
describe.each(shapes)("fitLinear(%s)", (shape) => {
  const tokens = readTokens(shape);
  const expected = readExpected(shape).linear;
  const fit = okFit(fitLinear(designOf(tokens), tokens.logMs));
  const { codes } = tokens.columns.speaker;

  test("has R's coefficients, errors, residual and R² to 9 digits", () => {
    expectDigits(fit.coefficients, expected.coefficients, 9);
    expectDigits(standardErrors(fit.covariance), expected.standardErrors.model, 9);
    expectDigits(
      [fit.residualSd, fit.rSquared],
      { residualSd: expected.residualSd, rSquared: expected.rSquared },
      9,
    );
  });

  test.each(["CR1S", "CR2"] as const)("clustered by speaker, %s: R's errors to 9 digits", (correction) => {
    const { covariance } = okFit(clusteredCovariance(fit, codes, correction));
    expectDigits(standardErrors(covariance), expected.standardErrors[correction], 9);
  });

  test("CR2 has clubSandwich's Satterthwaite degrees of freedom to 9 digits", () => {
    const { degreesOfFreedom, clusters } = okFit(clusteredCovariance(fit, codes, "CR2"));
    const k = fit.coefficients.length;
    const df = Array.from({ length: k }, (_, j) =>
      degreesOfFreedom(Array.from({ length: k }, (_, i) => (i === j ? 1 : 0))),
    );
    expectDigits(df, expected.satterthwaiteDf, 9);
    expect(Math.max(...df)).toBeLessThan(clusters);
  });
});
