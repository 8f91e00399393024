import { describe, expect, test } from "vitest";
import { fitMixedLinear } from "../../../src/statistics/models/fitMixedLinear.ts";
import {
  designOf,
  expectDigits,
  okFit,
  readExpected,
  readTokens,
  shapes,
  standardErrors,
} from "./readFixture.ts";

// Outside values: R's lme4::lmer with a tight optimiser, by make.R; versions in fixtures/versions.json.
describe.each(shapes)("fitMixedLinear(%s)", (shape) => {
  const tokens = readTokens(shape);
  const { speaker, word } = tokens.columns;

  test.each(["ML", "REML"] as const)(
    "%s: lmer's coefficients to 6 digits, errors and variances to 5",
    (method) => {
      const expected = readExpected(shape).mixedLinear[method.toLowerCase()];
      const fit = okFit(fitMixedLinear(designOf(tokens), tokens.logMs, { speaker, word }, { method }));
      expectDigits(fit.coefficients, expected.coefficients, 6);
      expectDigits(standardErrors(fit.covariance), expected.standardErrors, 5);
      for (const { unit, variance } of fit.groupings)
        expectDigits([variance], { [unit]: expected.variances[unit] }, 5);
      expectDigits([fit.residualVariance], { residual: expected.residualVariance }, 6);
      expect(fit.logLikelihood).toBeCloseTo(expected.logLikelihood, 7);
    },
  );
});
