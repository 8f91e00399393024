import { describe, expect, test } from "vitest";
import { crossGroups, groupsOf, rowsByGroup } from "../../../../src/statistics/models/crossedGroups.ts";
import { laplaceProblem } from "../../../../src/statistics/models/laplaceProblem.ts";
import { linearProfile } from "../../../../src/statistics/models/linearProfile.ts";
import type { Objective } from "../../../../src/statistics/models/minimise.ts";
import { quadratureProblem } from "../../../../src/statistics/models/quadratureProblem.ts";
import { designOf, inventTokens } from "./toyData.ts";

const { columns, terms, devoiced, logMs, ones } = inventTokens(7);
const { matrix, rows } = designOf(columns, terms);
const speakers = groupsOf("speaker", columns.speaker, rows);
const words = groupsOf("word", columns.word, rows);
const coefficients = [-0.2, 0.4, -0.3, -0.6, 0.2];

function expectGradient(objective: Objective, at: readonly number[]): void {
  const x = Float64Array.from(at);
  const { gradient } = objective(x);
  for (const j of x.keys()) {
    const values = [1e-4, -1e-4].map(
      (step) => objective(x.map((value, k) => (k === j ? value + step : value))).value,
    );
    const numerical = (values[0]! - values[1]!) / 2e-4;
    expect(Math.abs(gradient[j]! - numerical)).toBeLessThan(1e-4 * (1 + Math.abs(numerical)));
  }
}

describe("gradients equal central differences of the values", () => {
  test.each([
    [0.5, 0.8],
    [0.5, 0],
    [-0.3, 1.4],
  ])("laplaceProblem, crossed, at spreads %f and %f", (few, many) => {
    const { evaluate } = laplaceProblem(matrix, devoiced, ones, crossGroups(words, speakers));
    expectGradient(evaluate, [few, many, ...coefficients]);
  });

  test.each([1, 2, 9])("quadratureProblem with %i points", (points) => {
    const { evaluate } = quadratureProblem(matrix, devoiced, ones, rowsByGroup(words), points);
    expectGradient(evaluate, [1.2, ...coefficients]);
  });

  test.each([true, false])("linearProfile, reml %s", (reml) => {
    const profile = linearProfile(matrix, logMs, ones, 0, crossGroups(words, speakers), reml);
    const objective: Objective = (x) => {
      const { deviance, gradient } = profile(x)!;
      return { value: deviance, gradient };
    };
    expectGradient(objective, [0.4, 0.7]);
    expectGradient(objective, [0.4, 0]);
  });
});

test("one point of quadrature is Laplace's approximation", () => {
  const at = Float64Array.of(0.9, ...coefficients);
  const one = laplaceProblem(matrix, devoiced, ones, crossGroups(words, null)).evaluate(at);
  const other = quadratureProblem(matrix, devoiced, ones, rowsByGroup(words), 1).evaluate(at);
  expect(other.value).toBeCloseTo(one.value, 8);
  for (const [j, value] of one.gradient.entries()) expect(other.gradient[j]).toBeCloseTo(value, 5);
});

test("many points of quadrature approach the integral by a fine sum", () => {
  const theta = 0.9;
  const found = quadratureProblem(matrix, devoiced, ones, rowsByGroup(words), 25).evaluate(
    Float64Array.of(theta, ...coefficients),
  );
  const { start, order } = rowsByGroup(words);
  let logLikelihood = 0;
  for (let g = 0; g + 1 < start.length; g++) {
    let integral = 0;
    for (let u = -8; u <= 8; u += 0.01) {
      let log = -(u * u) / 2 - Math.log(2 * Math.PI) / 2;
      for (const i of order.subarray(start[g], start[g + 1])) {
        let eta = theta * u;
        for (let k = matrix.start[i]!; k < matrix.start[i + 1]!; k++)
          eta += matrix.value[k]! * coefficients[matrix.column[k]!]!;
        log += devoiced[i]! * eta - Math.log1p(Math.exp(eta));
      }
      integral += 0.01 * Math.exp(log);
    }
    logLikelihood += Math.log(integral);
  }
  expect(found.value).toBeCloseTo(-2 * logLikelihood, 7);
});

test("linearProfile's deviance is −2·log density of a normal with covariance by speaker and word", () => {
  // Two speakers, two words, one token each: 4 × 4 covariance σ²(I + a²·S + b²·W), inverted by hand through its eigenvectors.
  const toy = {
    speaker: { codes: Uint8Array.of(0, 0, 1, 1), labels: ["s", "t"] },
    word: { codes: Uint8Array.of(0, 1, 0, 1), labels: ["v", "w"] },
  };
  const design = designOf({}, [], { counts: [1, 1, 1, 1] });
  const groups = crossGroups(
    groupsOf("word", toy.word, design.rows),
    groupsOf("speaker", toy.speaker, design.rows),
  );
  const y = Float64Array.of(1, 2, 4, 3);
  const [a2, b2] = [0.25, 0.49];
  const found = linearProfile(
    design.matrix,
    y,
    new Float64Array(4).fill(1),
    0,
    groups,
    false,
  )(Float64Array.of(0.5, 0.7))!;
  const eigen = [1 + 2 * a2 + 2 * b2, 1 + 2 * a2, 1 + 2 * b2, 1];
  const scores = [0, (1 + 2 - 4 - 3) / 2, (1 - 2 + 4 - 3) / 2, (1 - 2 - 4 + 3) / 2];
  const variance = scores.reduce((sum, score, k) => sum + score ** 2 / eigen[k]!, 0) / 4;
  const logDeterminant = eigen.reduce((sum, value) => sum + Math.log(value), 0);
  expect(found.coefficients[0]).toBeCloseTo(2.5, 12);
  expect(found.residualVariance).toBeCloseTo(variance, 12);
  expect(found.deviance).toBeCloseTo(logDeterminant + 4 * (1 + Math.log(2 * Math.PI * variance)), 12);
});
