import { expect, test } from "vitest";
import {
  cholesky,
  choleskyInverse,
  choleskyLogDeterminant,
  choleskySolve,
} from "../../../../src/statistics/linearAlgebra/cholesky.ts";
import { invertPositiveDefinite } from "../../../../src/statistics/linearAlgebra/invertPositiveDefinite.ts";
import { multiplySquare, multiplyVector } from "../../../../src/statistics/linearAlgebra/square.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

function randomPositiveDefinite(n: number, seed: number): Float64Array {
  const random = seededRandom(seed);
  const a = Float64Array.from({ length: n * n }, () => random.normal());
  const transposed = a.map((_, at) => a[(at % n) * n + Math.floor(at / n)]!);
  const product = multiplySquare(a, transposed, n);
  for (let i = 0; i < n; i++) product[i * n + i]! += 0.1;
  return product;
}

test("cholesky, solve and determinant of a 3 × 3 matrix with known factor", () => {
  const a = Float64Array.of(4, 12, -16, 12, 37, -43, -16, -43, 98);
  expect(cholesky(a, 3)).toBe(true);
  expect([a[0], a[3], a[4], a[6], a[7], a[8]]).toEqual([2, 6, 1, -8, 5, 3]);
  expect(choleskyLogDeterminant(a, 3)).toBeCloseTo(Math.log(36), 14);
  const b = Float64Array.of(4 + 24 - 48, 12 + 74 - 129, -16 - 86 + 294);
  choleskySolve(a, 3, b);
  for (const [i, value] of [1, 2, 3].entries()) expect(b[i]).toBeCloseTo(value, 11);
});

test("cholesky refuses an indefinite matrix", () => {
  expect(cholesky(Float64Array.of(1, 2, 2, 1), 2)).toBe(false);
});

test.each([1, 5, 30])("choleskyInverse(%i × %i) times the matrix is the identity", (n) => {
  const a = randomPositiveDefinite(n, n);
  const factor = Float64Array.from(a);
  expect(cholesky(factor, n)).toBe(true);
  const product = multiplySquare(a, choleskyInverse(factor, n), n);
  for (let at = 0; at < n * n; at++) expect(product[at]).toBeCloseTo(at % (n + 1) === 0 ? 1 : 0, 8);
});

test("invertPositiveDefinite does not mind units of the columns", () => {
  const units = Float64Array.of(1e9, 1, 1e-9);
  const a = randomPositiveDefinite(3, 8);
  const scaled = a.map((value, at) => value * units[Math.floor(at / 3)]! * units[at % 3]!);
  const inverse = invertPositiveDefinite(scaled, 3)!;
  const solved = multiplyVector(inverse, multiplyVector(scaled, Float64Array.of(3e-9, -2, 5e9)));
  expect(solved[0]! / 3e-9).toBeCloseTo(1, 10);
  expect(solved[1]).toBeCloseTo(-2, 9);
  expect(solved[2]! / 5e9).toBeCloseTo(1, 10);
});

test("invertPositiveDefinite is null for a singular matrix and for overflow", () => {
  expect(invertPositiveDefinite(Float64Array.of(1, 1, 1, 1), 2)).toBeNull();
  expect(invertPositiveDefinite(Float64Array.of(Number.POSITIVE_INFINITY), 1)).toBeNull();
});
