import { describe, expect, test } from "vitest";
import {
  allTheSameOutcome,
  impossibleCounts,
  tooFewTokens,
  valueNotFinite,
} from "../../../../src/messages/models.ts";
import { fitLogistic } from "../../../../src/statistics/models/fitLogistic.ts";
import { designOf, inventTokens, labelled, okFit, toCells } from "./toyData.ts";

const counts = (k: number[], n: number[]) => [Float64Array.from(k), Float64Array.from(n)] as const;
const twoGroups = designOf({ g: labelled(["p", "q"]) }, [{ column: "g" }]);

describe("fitLogistic", () => {
  test("of two groups is the log odds ratio with its classical error", () => {
    const fit = okFit(fitLogistic(twoGroups, ...counts([10, 30], [40, 50])));
    expect(fit.coefficients[0]).toBeCloseTo(Math.log(10 / 30), 12);
    expect(fit.coefficients[1]).toBeCloseTo(Math.log((30 * 30) / (20 * 10)), 12);
    expect(fit.covariance[3]).toBeCloseTo(1 / 10 + 1 / 30 + 1 / 30 + 1 / 20, 12);
    const saturated = 10 * Math.log(0.25) + 30 * Math.log(0.75) + 30 * Math.log(0.6) + 20 * Math.log(0.4);
    expect(fit.logLikelihood).toBeCloseTo(saturated, 12);
  });

  test("with Firth's correction of two groups adds half a token to every count", () => {
    const fit = okFit(fitLogistic(twoGroups, ...counts([0, 30], [40, 50]), { onSeparation: "firth" }));
    expect(fit.method).toBe("Firth");
    expect(fit.coefficients[0]).toBeCloseTo(Math.log(0.5 / 40.5), 6);
    expect(fit.coefficients[1]).toBeCloseTo(Math.log(30.5 / 20.5) - Math.log(0.5 / 40.5), 6);
  });

  test("method Firth also serves where nothing is separated", () => {
    const outcome = fitLogistic(twoGroups, ...counts([10, 30], [40, 50]), { method: "Firth" });
    expect(okFit(outcome).coefficients[0]).toBeCloseTo(Math.log(10.5 / 30.5), 9);
    expect(outcome.notices).toEqual([]);
  });

  test.each(["maximum likelihood", "Firth"] as const)("%s: cells give the same as their tokens", (method) => {
    const tokens = inventTokens(1);
    const cells = toCells(tokens);
    expect(cells.tokens.length).toBeLessThan(tokens.ones.length);
    const one = okFit(
      fitLogistic(designOf(tokens.columns, tokens.terms), tokens.devoiced, tokens.ones, { method }),
    );
    const other = okFit(
      fitLogistic(designOf(cells.columns, tokens.terms), cells.devoiced, cells.tokens, { method }),
    );
    for (const [j, value] of one.coefficients.entries()) expect(other.coefficients[j]).toBeCloseTo(value, 8);
    for (const [at, value] of one.covariance.entries()) expect(other.covariance[at]).toBeCloseTo(value, 9);
    expect(other.logLikelihood).toBeCloseTo(one.logLikelihood, 8);
    expect(other.tokens).toBe(one.tokens);
  });

  test("swapping marked and unmarked turns every sign", () => {
    const { columns, terms, devoiced, ones } = inventTokens(2);
    const design = designOf(columns, terms);
    const one = okFit(fitLogistic(design, devoiced, ones));
    const other = okFit(
      fitLogistic(
        design,
        devoiced.map((value) => 1 - value),
        ones,
      ),
    );
    for (const [j, value] of one.coefficients.entries()) expect(other.coefficients[j]).toBeCloseTo(-value, 9);
  });

  test("another reference level changes the names, not the fit", () => {
    const { columns, terms, devoiced, ones } = inventTokens(3);
    const one = okFit(fitLogistic(designOf(columns, terms), devoiced, ones));
    const reference = columns.c1.labels[2]!;
    const turned = [{ column: "vowel" }, { column: "c1", reference }, { column: "rate" }];
    const other = okFit(fitLogistic(designOf(columns, turned), devoiced, ones));
    expect(other.logLikelihood).toBeCloseTo(one.logLikelihood, 9);
    expect(other.coefficients[1]).toBeCloseTo(one.coefficients[1]!, 8);
  });

  test("a level without exceptions: stops, naming level and counts and the ways out", () => {
    const outcome = fitLogistic(twoGroups, ...counts([0, 30], [40, 50]));
    expect(outcome).toMatchObject({ status: "cannot be estimated" });
    expect(outcome).toHaveProperty("reason", expect.stringMatching(/g=p: none of its 40 tokens.*Firth/));
  });

  test.each([
    ["none marked", [0, 0], [40, 50], allTheSameOutcome(0, 90)],
    ["all marked", [40, 50], [40, 50], allTheSameOutcome(90, 90)],
    ["NaN marked", [1, Number.NaN], [40, 50], valueNotFinite("The count of marked tokens", 1, Number.NaN)],
    ["NaN tokens", [1, 2], [Number.NaN, 50], valueNotFinite("The count of tokens", 0, Number.NaN)],
    ["more marked than tokens", [1, 51], [40, 50], impossibleCounts(1, 51, 50)],
    ["fewer tokens than needed", [0, 1], [1, 1], tooFewTokens(2, 2)],
  ])("%s: cannot be estimated, and says why", (_, k, n, reason) => {
    expect(fitLogistic(twoGroups, ...counts(k, n))).toEqual({
      status: "cannot be estimated",
      reason,
      notices: [],
    });
  });
});
