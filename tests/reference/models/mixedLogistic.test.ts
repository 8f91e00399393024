import { describe, expect, test } from "vitest";
import { fitMixedLogistic } from "../../../src/statistics/models/fitMixedLogistic.ts";
import { marginalEffects } from "../../../src/statistics/models/marginalEffects.ts";
import { designOf, expectDigits, okFit, readExpected, readTokens, standardErrors } from "./readFixture.ts";

// Outside values: R's lme4::glmer with a tight optimiser, by make.R; versions in fixtures/versions.json.
const models = [
  { name: "crossedLaplace", units: ["speaker", "word"], quadraturePoints: 1 },
  { name: "speakerLaplace", units: ["speaker"], quadraturePoints: 1 },
  { name: "speakerQuadrature10", units: ["speaker"], quadraturePoints: 10 },
] as const;

describe.each(["fewSpeakers", "manySpeakers", "rareOutcome", "crossed"] as const)(
  "fitMixedLogistic(%s)",
  (shape) => {
    const tokens = readTokens(shape);
    const design = designOf(tokens);

    test.each(models)(
      "$name: glmer's coefficients to 4 digits, errors and variances to 3",
      ({ name, units, quadraturePoints }) => {
        const expected = readExpected(shape).mixedLogistic[name];
        const intercepts = Object.fromEntries(units.map((unit) => [unit, tokens.columns[unit]]));
        const fit = okFit(
          fitMixedLogistic(design, tokens.devoiced, tokens.ones, intercepts, { quadraturePoints }),
        );
        expectDigits(fit.coefficients, expected.coefficients, 4);
        expectDigits(standardErrors(fit.covariance), expected.standardErrors, 3);
        expect(fit.groupings.map(({ unit }) => unit)).toEqual(units);
        for (const { unit, variance } of fit.groupings)
          expectDigits([variance], { [unit]: expected.variances[unit] }, 3);
        expect(fit.logLikelihood).toBeCloseTo(expected.logLikelihood, 4);
        expect(fit.logLikelihood).toBeGreaterThan(expected.logLikelihood - 1e-6);
      },
    );
  },
);

test("marginalEffects(mixed fit) averages rates over speakers and words as numerical integration in R does, to 3 digits", () => {
  const tokens = readTokens("fewSpeakers");
  const { speaker, word } = tokens.columns;
  const fit = okFit(fitMixedLogistic(designOf(tokens), tokens.devoiced, tokens.ones, { speaker, word }));
  const expected = readExpected("fewSpeakers").mixedMarginalEffects;
  const effects = marginalEffects(fit, fit.covariance);
  expect(effects).toHaveLength(6);
  for (const { column, level, percentagePoints, standardError } of effects)
    expectDigits(
      [percentagePoints, standardError],
      expected[level === null ? column : `${column}=${level}`],
      3,
    );
});
