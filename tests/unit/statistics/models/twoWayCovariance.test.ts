import { expect, test } from "vitest";
import { tooFewClusters } from "../../../../src/messages/models.ts";
import { clusteredCovariance } from "../../../../src/statistics/models/clusteredCovariance.ts";
import { fitLinear } from "../../../../src/statistics/models/fitLinear.ts";
import { twoWayCovariance } from "../../../../src/statistics/models/twoWayCovariance.ts";
import { designOf, inventTokens, okFit } from "./toyData.ts";

const { columns, terms, logMs } = inventTokens(10);
const fit = okFit(fitLinear(designOf(columns, terms), logMs));

test("twoWayCovariance of words nested in speakers is that of speakers", () => {
  const nested = Array.from(columns.word.codes, (word, i) => columns.speaker.codes[i]! * 100 + word);
  const both = okFit(
    twoWayCovariance(fit, { first: columns.speaker.codes, second: nested, correction: "CR1" }),
  );
  const one = okFit(clusteredCovariance(fit, columns.speaker.codes, "CR1"));
  for (const [at, value] of one.covariance.entries()) expect(both.covariance[at]).toBeCloseTo(value, 12);
  expect(both.degreesOfFreedom([1, 0, 0, 0, 0])).toBe(7);
});

test("twoWayCovariance does not depend on which clustering comes first", () => {
  const { speaker, word } = columns;
  const one = okFit(twoWayCovariance(fit, { first: speaker.codes, second: word.codes }));
  const other = okFit(twoWayCovariance(fit, { first: word.codes, second: speaker.codes }));
  for (const [at, value] of one.covariance.entries()) expect(other.covariance[at]).toBeCloseTo(value, 14);
});

test("twoWayCovariance has no negative variance", () => {
  for (let seed = 1; seed <= 30; seed++) {
    const small = inventTokens(seed, 40);
    const tried = okFit(fitLinear(designOf(small.columns, small.terms), small.logMs));
    const { speaker, word } = small.columns;
    const { covariance } = okFit(twoWayCovariance(tried, { first: speaker.codes, second: word.codes }));
    for (let j = 0; j < 5; j++) expect(covariance[j * 6]).toBeGreaterThanOrEqual(0);
  }
});

test("twoWayCovariance refuses a single word, by name", () => {
  const outcome = twoWayCovariance(fit, {
    first: columns.speaker.codes,
    second: new Uint16Array(logMs.length),
  });
  expect(outcome).toMatchObject({ status: "cannot be estimated", reason: tooFewClusters(1, "word") });
});
