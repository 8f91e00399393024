import { expect, test } from "vitest";
import { measureGrid } from "../../../src/datasets/measureGrid.ts";

const multiples = (stepMs: number, from: number, count: number): number[] =>
  Array.from({ length: count }, (_, index) => stepMs * (from + (index % 20)));

test.each([
  [10, 3, 30],
  [5, 3, 15],
  [2.5, 8, 20],
  [20, 2, 40],
])("measureGrid finds a %d ms grid whose shortest duration is %d steps", (gridMs, steps, floorMs) => {
  expect(measureGrid(multiples(gridMs, steps, 400))).toEqual({ gridMs, floorMs });
});

test("measureGrid keeps the grid though one duration in a hundred is off it, and rounding of 0.1 µs", () => {
  const durations = multiples(10, 3, 400).map((value) => value + 0.0001);
  durations[7] = 33.3;
  expect(measureGrid(durations)).toEqual({ gridMs: 10, floorMs: 30 });
});

test("measureGrid finds no grid in hand-placed times, no floor where single steps occur, and nothing in few", () => {
  const placed = Array.from({ length: 300 }, (_, index) => 50 + ((index * 7919) % 1999) / 10 + 0.05);
  expect(measureGrid(placed)).toEqual({ gridMs: null, floorMs: null });
  expect(measureGrid(multiples(10, 1, 400))).toEqual({ gridMs: 10, floorMs: null });
  expect(measureGrid([10, 20])).toEqual({ gridMs: null, floorMs: null });
});
