import { expect, test } from "vitest";
import { clusteredErrors } from "../../../../src/estimates/explain/clusterings.ts";
import { clusteredCovariance } from "../../../../src/statistics/models/clusteredCovariance.ts";
import { fitLinear } from "../../../../src/statistics/models/fitLinear.ts";
import { twoWayCovariance } from "../../../../src/statistics/models/twoWayCovariance.ts";
import { designOf, inventTokens, okFit } from "../../statistics/models/toyData.ts";

const { columns, logMs, terms } = inventTokens(5, 900);
const fit = okFit(fitLinear(designOf(columns, terms), logMs));
const groupings = { speakers: columns.speaker, items: { unit: "word" as const, column: columns.word } };

test("clusteredErrors offers speakers, words and both at once, as the errors for one and for two clusterings", () => {
  const { covariances, units } = okFit(clusteredErrors(fit, groupings));
  expect(units).toEqual(["speaker", "word"]);
  const [speaker, word, both] = covariances;
  expect(speaker!.covariance).toEqual(
    okFit(clusteredCovariance(fit, columns.speaker.codes, "CR2")).covariance,
  );
  expect(word!.covariance).toEqual(okFit(clusteredCovariance(fit, columns.word.codes, "CR2")).covariance);
  const two = twoWayCovariance(fit, { first: columns.speaker.codes, second: columns.word.codes });
  const k = fit.coefficients.length;
  // Nothing came out negative here, so that the two agree on every variance.
  expect(two.notices).toEqual([]);
  for (let j = 0; j < k; j++)
    expect(both!.covariance[j * k + j]).toBeCloseTo(okFit(two).covariance[j * k + j]!, 12);
  const contrast = Float64Array.from({ length: k }, (_, j) => (j === 1 ? 1 : 0));
  expect(both!.degreesOfFreedom(contrast)).toBe(
    Math.min(speaker!.degreesOfFreedom(contrast), word!.degreesOfFreedom(contrast)),
  );
});
