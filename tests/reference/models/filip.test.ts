import { expect, test } from "vitest";
import { leastSquares } from "../../../src/statistics/linearAlgebra/leastSquares.ts";
import { matrixFromColumns } from "../../../src/statistics/linearAlgebra/matrix.ts";
import certified from "./fixtures/filip.json" with { type: "json" };

const powers = matrixFromColumns(Array.from({ length: 11 }, (_, k) => certified.x.map((x) => x ** k)));

// NIST StRD Filip, the hardest of its linear sets: powers up to the tenth of numbers between −9 and −3.
test("leastSquares(Filip) keeps all 11 columns and at least 7 digits of the certified values", () => {
  const found = leastSquares(powers, Float64Array.from(certified.y));
  expect(found.rank).toBe(11);
  const residualSd = Math.sqrt(found.residualSumOfSquares / (certified.y.length - 11));
  const digits = (got: number, truth: number) => -Math.log10(Math.abs(got / truth - 1));
  const ofCoefficients = Math.min(
    ...certified.coefficients.map((truth, j) => digits(found.coefficients[j]!, truth)),
  );
  const ofErrors = Math.min(
    ...certified.standardErrors.map((truth, j) =>
      digits(residualSd * Math.sqrt(found.unscaledCovariance[j * 11 + j]!), truth),
    ),
  );
  const ofResidual = digits(residualSd, certified.residualSd);
  console.log(
    `Filip: digits of agreement: coefficients ${ofCoefficients.toFixed(1)}, errors ${ofErrors.toFixed(1)}, residual ${ofResidual.toFixed(1)}`,
  );
  expect(ofCoefficients).toBeGreaterThan(7);
  expect(ofErrors).toBeGreaterThan(7);
  expect(ofResidual).toBeGreaterThan(7.5);
});

test("leastSquares(Filip, tolerance 1e-7) names the columns it cannot tell apart at that tolerance", () => {
  const found = leastSquares(powers, Float64Array.from(certified.y), 1e-7);
  expect(found.rank).toBe(11 - found.aliased.length);
  expect(found.aliased).toEqual([10]);
});
