import { expect, test } from "vitest";
import { effectsOf } from "../../../../src/estimates/explain/effects.ts";
import { noBounds } from "../../../../src/messages/explain.ts";
import { coefficientTable } from "../../../../src/statistics/models/coefficientTable.ts";
import { fitLogistic } from "../../../../src/statistics/models/fitLogistic.ts";
import { marginalEffects } from "../../../../src/statistics/models/marginalEffects.ts";
import { designOf, inventTokens, okFit } from "../../statistics/models/toyData.ts";

const { columns, devoiced, ones, terms } = inventTokens(7);
const fit = okFit(fitLogistic(designOf(columns, terms), devoiced, ones));
const always = (degreesOfFreedom: number) => () => degreesOfFreedom;
const options = { level: 0.95, speakers: columns.speaker, devoiced, units: { rate: "mora/s" } };

test("effectsOf takes, effect by effect, the covariance with the widest interval", () => {
  const k = fit.coefficients.length;
  // The second one doubles the error of the first term's coefficient and halves all others.
  const other = fit.covariance.map((value, at) => {
    const factor = (j: number) => (j === 1 ? 2 : 0.5);
    return value * factor(Math.floor(at / k)) * factor(at % k);
  });
  const errors = [fit.covariance, other].map((covariance) => ({ covariance, degreesOfFreedom: always(30) }));
  const { effects } = effectsOf(fit, errors, options);
  const [own, doubled] = errors.map((one) => coefficientTable(fit, one.covariance, one));
  for (const [j, effect] of effects.entries()) {
    const expected = (j === 0 ? doubled : own)![j + 1]!;
    expect(effect.ratio!.low).toBeCloseTo(expected.ratioLow, 12);
    expect(effect.ratio!.high).toBeCloseTo(expected.ratioHigh, 12);
  }
  const points = marginalEffects(fit, other, { degreesOfFreedom: 30 });
  expect(effects[0]!.percentagePoints!.low).toBeCloseTo(points[0]!.low, 10);
  expect(effects.at(-1)).toMatchObject({ term: "rate", level: null, unit: "mora/s", tokens: 600 });
});

test("effectsOf leaves bounds open, and says so, where the errors have no degrees of freedom", () => {
  const { effects, notices } = effectsOf(
    fit,
    [{ covariance: fit.covariance, degreesOfFreedom: always(0) }],
    options,
  );
  for (const { ratio, percentagePoints, p } of effects) {
    expect(ratio).toMatchObject({ low: null, high: null });
    expect(percentagePoints).toMatchObject({ low: null, high: null });
    expect(p).toBeNull();
  }
  expect(notices).toContain(noBounds());
});
