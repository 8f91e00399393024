import { expect, test } from "vitest";
import { householderQr } from "../../../../src/statistics/linearAlgebra/householderQr.ts";
import { leastSquares } from "../../../../src/statistics/linearAlgebra/leastSquares.ts";
import { matrixFromColumns } from "../../../../src/statistics/linearAlgebra/matrix.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

const random = seededRandom(4);
const normals = (n: number) => Float64Array.from({ length: n }, () => random.normal());

test("leastSquares of a line through three points is the closed form", () => {
  const found = leastSquares(
    matrixFromColumns([
      [1, 1, 1],
      [0, 1, 2],
    ]),
    Float64Array.of(1, 3, 4),
  );
  expect(found.coefficients[0]).toBeCloseTo(7 / 6, 15);
  expect(found.coefficients[1]).toBeCloseTo(1.5, 15);
  expect(found.residualSumOfSquares).toBeCloseTo(1 / 6, 15);
  for (const [at, value] of [5 / 6, -1 / 2, -1 / 2, 1 / 2].entries())
    expect(found.unscaledCovariance[at]).toBeCloseTo(value, 14);
});

test("leastSquares leaves residuals orthogonal to every column", () => {
  const columns = [normals(50), normals(50), normals(50)];
  const { residuals } = leastSquares(matrixFromColumns(columns), normals(50));
  for (const column of columns)
    expect(column.reduce((sum, value, i) => sum + value * residuals[i]!, 0)).toBeCloseTo(0, 13);
});

test("leastSquares names a column that follows from earlier ones and fits without it", () => {
  const [a, b] = [normals(20), normals(20)];
  const sum = a.map((value, i) => value + 3 * b[i]!);
  const y = normals(20);
  const found = leastSquares(matrixFromColumns([a, sum, b]), y);
  expect(found.aliased).toEqual([2]);
  expect(found.coefficients[2]).toBe(0);
  expect(found.unscaledCovariance[8]).toBe(0);
  const without = leastSquares(matrixFromColumns([a, sum]), y);
  for (const j of [0, 1]) expect(found.coefficients[j]).toBeCloseTo(without.coefficients[j]!, 12);
});

test("leastSquares: a column scaled by a power of two only scales its coefficient, to the last bit", () => {
  const [a, b, y] = [normals(12), normals(12), normals(12)];
  const plain = leastSquares(matrixFromColumns([a, b]), y);
  const scaled = leastSquares(matrixFromColumns([a, b.map((value) => value * 2 ** 40)]), y);
  expect(scaled.coefficients[0]).toBe(plain.coefficients[0]);
  expect(scaled.coefficients[1]).toBe(plain.coefficients[1]! * 2 ** -40);
});

test("householderQr sends a column of zeros to the end and keeps the order of the rest", () => {
  const qr = householderQr(
    matrixFromColumns([
      [0, 0, 0],
      [1, 2, 3],
      [1, 0, 1],
    ]),
  );
  expect(qr.rank).toBe(2);
  expect([...qr.pivot]).toEqual([1, 2, 0]);
});

test("householderQr of more columns than rows has the rank of the rows", () => {
  expect(
    householderQr(
      matrixFromColumns([
        [1, 2],
        [3, 4],
        [5, 6],
      ]),
    ).rank,
  ).toBe(2);
});
