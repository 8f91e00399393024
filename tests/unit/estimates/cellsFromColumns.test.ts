import { expect, test } from "vitest";
import { type ColumnArrays, cellsFromColumns } from "../../../src/estimates/cellsFromColumns.ts";
import { missingCellColumn, raggedCellColumn } from "../../../src/messages/estimates.ts";
import { UserError } from "../../../src/messages/userError.ts";

const columns: ColumnArrays = {
  dataset: ["b", "a"],
  labelSet: ["x", "x"],
  speaker: ["s", "s"],
  kind: ["vowel", "vowel"],
  phone: ["i", "u"],
  length: [null, "short"],
  before: ["k", "k"],
  after: ["t", "pause"],
  position: ["medial", "final"],
  accented: [true, undefined],
  devoiceableNeighbour: [false, true],
  timeBasis: ["aligned", "aligned"],
  devoicedBasis: [null, "annotated"],
  tokens: [2n, 1n],
  atFloor: [1, 0],
  marked: Int32Array.from([0, 1]),
  devoiced: [0, 1],
  sumMs: Float64Array.from([70, 50.25]),
  sumSquareMs: [2500, 2525],
  sumLogMs: [7, 4],
  sumSquareLogMs: [25, 15],
  histogramMs: [[30, 40], { items: [50n] }],
  histogramTokens: [Int32Array.from([1, 1]), [1]],
};

test("cellsFromColumns takes numbers, bigints, typed arrays, booleans, nulls and lists as readers give them", () => {
  const cells = cellsFromColumns(columns);
  expect(cells.size).toBe(2);
  expect([...cells.tokens]).toEqual([2, 1]);
  expect([...cells.sumMs]).toEqual([70, 50.25]);
  expect(cells.dimensions.dataset.labels).toEqual(["a", "b"]);
  expect([...cells.dimensions.dataset.codes]).toEqual([1, 0]);
  expect(cells.dimensions.length.labels).toEqual(["short", null]);
  expect(cells.dimensions.accented.labels).toEqual(["true", null]);
  expect([...cells.histogramStart]).toEqual([0, 2, 3]);
  expect([...cells.histogramMs]).toEqual([30, 40, 50]);
  expect([...cells.histogramTokens]).toEqual([1, 1, 1]);
});

test("cellsFromColumns of no rows is empty", () => {
  const empty = Object.fromEntries(Object.keys(columns).map((name) => [name, []]));
  expect(cellsFromColumns(empty).size).toBe(0);
});

test("cellsFromColumns names a column that is missing or of another length", () => {
  const { phone: _, ...rest } = columns;
  expect(() => cellsFromColumns(rest)).toThrow(new UserError(missingCellColumn("phone")));
  expect(() => cellsFromColumns({ ...columns, phone: ["i"] })).toThrow(
    new UserError(raggedCellColumn("phone", 1, 2)),
  );
});
