import { describe, expect, test } from "vitest";
import { fewClusters, tooFewClusters } from "../../../../src/messages/models.ts";
import { clusteredCovariance } from "../../../../src/statistics/models/clusteredCovariance.ts";
import { coefficientTable } from "../../../../src/statistics/models/coefficientTable.ts";
import { fitLinear } from "../../../../src/statistics/models/fitLinear.ts";
import { fitLogistic } from "../../../../src/statistics/models/fitLogistic.ts";
import { designOf, inventTokens, labelled, okFit, toCells } from "./toyData.ts";

const corrections = ["CR0", "CR1", "CR1S", "CR2"] as const;

describe("clusteredCovariance", () => {
  test.each(corrections)(
    "%s of a mean with equal clusters is the closed form from cluster means",
    (correction) => {
      const response = [1, 3, 2, 6, 4, 8];
      const fit = okFit(fitLinear(designOf({}, [], { counts: [1, 1, 1, 1, 1, 1] }), response));
      const { covariance, degreesOfFreedom } = okFit(
        clusteredCovariance(fit, [7, 7, 9, 9, 4, 4], correction),
      );
      // Cluster means 2, 4, 6 about the mean 4.
      const unbiased = ((2 - 4) ** 2 + (6 - 4) ** 2) / 2 / 3;
      const factor = { CR0: 2 / 3, CR1: 1, CR1S: 1, CR2: 1 }[correction];
      expect(covariance[0]).toBeCloseTo(unbiased * factor, 12);
      expect(degreesOfFreedom([1])).toBeCloseTo(2, 10);
    },
  );

  test.each(corrections)("%s: cells give the same as their tokens", (correction) => {
    const tokens = inventTokens(5);
    const cells = toCells(tokens);
    const one = okFit(fitLogistic(designOf(tokens.columns, tokens.terms), tokens.devoiced, tokens.ones));
    const other = okFit(fitLogistic(designOf(cells.columns, tokens.terms), cells.devoiced, cells.tokens));
    const a = okFit(clusteredCovariance(one, tokens.columns.speaker.codes, correction));
    const b = okFit(clusteredCovariance(other, cells.columns.speaker.codes, correction));
    for (const [at, value] of a.covariance.entries()) expect(b.covariance[at]).toBeCloseTo(value, 9);
    expect(b.degreesOfFreedom([0, 1, 0, 0, 0])).toBeCloseTo(a.degreesOfFreedom([0, 1, 0, 0, 0]), 6);
  });

  test("refuses one speaker, and doubts few unless CR2 is used", () => {
    const { columns, terms, logMs } = inventTokens(6);
    const fit = okFit(fitLinear(designOf(columns, terms), logMs));
    const one = clusteredCovariance(fit, new Uint16Array(logMs.length), "CR1");
    expect(one).toMatchObject({ status: "cannot be estimated", reason: tooFewClusters(1, "speaker") });
    expect(clusteredCovariance(fit, columns.speaker.codes, "CR1").notices).toEqual([
      fewClusters(8, "speaker"),
    ]);
    expect(clusteredCovariance(fit, columns.speaker.codes, "CR2").notices).toEqual([]);
    expect(clusteredCovariance(fit, columns.word.codes, "CR1", "word").notices).toEqual([]);
  });

  test("CR2: an effect of which one speaker alone decides a part gets an open interval, not a narrow one", () => {
    const group = labelled(["x", "x", "y", "y", "y", "y"]);
    const fit = okFit(fitLinear(designOf({ group }, [{ column: "group" }]), [1, 3, 2, 6, 4, 9]));
    const found = okFit(clusteredCovariance(fit, [1, 1, 2, 2, 3, 3], "CR2"));
    // All of x is by speaker 1, whose residuals sum to nothing: the variance sees y only, in both coefficients' stead.
    for (const row of coefficientTable(fit, found.covariance, found))
      expect([row.low, row.high]).toEqual([Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]);
    // The mean of y, intercept and slope together, rests on two speakers.
    expect(found.degreesOfFreedom([1, 1])).toBeCloseTo(1, 6);
  });
});
