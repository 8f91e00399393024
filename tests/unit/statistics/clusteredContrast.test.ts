import { expect, test } from "vitest";
import { clusteredContrast } from "../../../src/statistics/clusteredContrast.ts";
import { clusteredCovariance } from "../../../src/statistics/models/clusteredCovariance.ts";
import { fitLinear } from "../../../src/statistics/models/fitLinear.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { designOf, labelled, okFit } from "./models/toyData.ts";

function draw(seed: number, size: number, words: number, strata: number) {
  const random = seededRandom(seed);
  const word = Array.from({ length: size }, () => random.below(words));
  return {
    cluster: word,
    stratum: word.map(() => random.below(strata)),
    side: word.map((w) => w % 2),
    value: word.map((w) => 0.2 * (w % 5) + random.normal()),
  };
}

/** The same contrast as a regression with an intercept for each stratum, by the models' own CR2. */
function byRegression({ cluster, stratum, side, value }: ReturnType<typeof draw>) {
  const columns = {
    stratum: labelled(stratum.map((s) => `s${s}`)),
    side: labelled(["0", "1", ...side.map(String)]),
  };
  const codes = columns.side.codes.slice(2);
  const design = designOf({ ...columns, side: { ...columns.side, codes } }, [
    { column: "stratum" },
    { column: "side", reference: "0" },
  ]);
  const fit = okFit(fitLinear(design, value));
  const { covariance, degreesOfFreedom } = okFit(clusteredCovariance(fit, cluster, "CR2", "word"));
  const k = fit.coefficients.length;
  const contrast = Float64Array.from({ length: k }, (_, j) => Number(j === k - 1));
  return { variance: covariance[k * k - 1]!, df: degreesOfFreedom(contrast) };
}

test.each([
  [400, 40, 1],
  [600, 60, 6],
  [300, 12, 3],
])(
  "clusteredContrast of %i tokens in %i clusters and %i strata is near CR2 of the regression",
  (size, words, strata) => {
    const tokens = draw(size, size, words, strata);
    const got = clusteredContrast(tokens)!;
    const { variance, df } = byRegression(tokens);
    expect(got.clusters).toBe(words);
    expect(Math.sqrt(got.variance / variance)).toBeGreaterThan(0.97);
    expect(Math.sqrt(got.variance / variance)).toBeLessThan(1.03);
    expect(got.df / df).toBeGreaterThan(0.9);
    expect(got.df / df).toBeLessThan(1.1);
  },
);

test("clusteredContrast of equal clusters, one side each, is Welch's variance of their means", () => {
  // Means of clusters 1, 3, 2 on one side and 4, 8, 6 on the other: (variance 1 + variance 4) / 3; equal sizes.
  const means = [1, 3, 2, 4, 8, 6];
  const cluster = means.flatMap((_, k) => [k, k]);
  const got = clusteredContrast({
    ...{ cluster, stratum: cluster.map(() => 0), side: cluster.map((k) => Number(k < 3)) },
    value: cluster.map((k, i) => means[k]! + (i % 2 === 0 ? 0.5 : -0.5)),
  })!;
  expect(got.variance).toBeCloseTo((1 + 4) / 3, 12);
  expect(got.df).toBeCloseTo(4, 10);
});

test("clusteredContrast tells how much of the error one cluster on a side hides, and is null without a comparison", () => {
  const whole = { stratum: [0, 0, 0, 0, 0, 0], value: [1, 2, 3, 4, 5, 7], side: [1, 1, 0, 0, 0, 0] };
  expect(clusteredContrast({ ...whole, cluster: [0, 0, 1, 1, 2, 2] })!.seen).toBeLessThan(0.2);
  expect(clusteredContrast({ ...whole, cluster: [0, 0, 0, 0, 0, 0] })).toBeNull();
  expect(clusteredContrast({ ...whole, side: [1, 1, 1, 1, 1, 1], cluster: [0, 1, 2, 3, 4, 5] })).toBeNull();
});
