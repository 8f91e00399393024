import { expect, test } from "vitest";
import { dependentColumns } from "../../../../src/statistics/linearAlgebra/dependentColumns.ts";
import {
  multiply,
  quadraticForms,
  type SparseRows,
  transposeMultiply,
  weightedGram,
} from "../../../../src/statistics/linearAlgebra/sparseRows.ts";

/** [[1, 0, 2], [0, 3, 0], [4, 5, 6]] */
const matrix: SparseRows = {
  rows: 3,
  columns: 3,
  start: Uint32Array.of(0, 2, 3, 6),
  column: Uint16Array.of(0, 2, 1, 0, 1, 2),
  value: Float64Array.of(1, 2, 3, 4, 5, 6),
};

test("multiply and transposeMultiply are the products by hand", () => {
  expect([...multiply(matrix, Float64Array.of(1, 10, 100))]).toEqual([201, 30, 654]);
  expect([...transposeMultiply(matrix, Float64Array.of(1, 10, 100))]).toEqual([401, 530, 602]);
});

test("weightedGram is Xᵀ diag(w) X by hand", () => {
  expect([...weightedGram(matrix, Float64Array.of(1, 2, 1))]).toEqual([17, 20, 26, 20, 43, 30, 26, 30, 40]);
});

test("quadraticForms with the identity are squared lengths of rows", () => {
  expect([...quadraticForms(matrix, Float64Array.of(1, 0, 0, 0, 1, 0, 0, 0, 1))]).toEqual([5, 9, 77]);
});

test("dependentColumns names later columns of a gram matrix that follow from earlier ones", () => {
  // Columns a = (1, 0), b = (0, 1), a + b, and 0.
  const gram = Float64Array.of(1, 0, 1, 0, 0, 1, 1, 0, 1, 1, 2, 0, 0, 0, 0, 0);
  expect(dependentColumns(gram, 4)).toEqual([2, 3]);
});
