import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { plainToken, sampleTokens, shuffled } from "./sampleTokens.ts";

test("cellsFromTokens adds up what shares its labels", () => {
  const cells = cellsFromTokens([
    { ...plainToken, durationMs: 30, atFloor: true, devoiced: true },
    { ...plainToken, durationMs: 50.4, devoiced: null },
    { ...plainToken, durationMs: 50.4 },
    { ...plainToken, speaker: "s2" },
  ]);
  expect(cells.size).toBe(2);
  const first = cells.dimensions.speaker.labels[cells.dimensions.speaker.codes[0]!] === "s1" ? 0 : 1;
  const of = (column: Float64Array) => column[first];
  expect([of(cells.tokens), of(cells.atFloor), of(cells.marked), of(cells.devoiced)]).toEqual([3, 1, 2, 1]);
  expect(of(cells.sumMs)).toBeCloseTo(130.8, 10);
  expect(of(cells.sumSquareMs)).toBeCloseTo(900 + 2 * 50.4 ** 2, 10);
  expect(of(cells.sumLogMs)).toBeCloseTo(Math.log(30) + 2 * Math.log(50.4), 10);
  const [start, end] = [cells.histogramStart[first]!, cells.histogramStart[first + 1]!];
  expect([...cells.histogramMs.subarray(start, end)]).toEqual([30, 50]);
  expect([...cells.histogramTokens.subarray(start, end)]).toEqual([1, 2]);
});

test("cellsFromTokens loses no token, whatever their order", () => {
  const tokens = sampleTokens(3000, 4, 50);
  const total = (column: Float64Array) => column.reduce((sum, value) => sum + value, 0);
  const cells = cellsFromTokens(shuffled(tokens, 1));
  expect(total(cells.tokens)).toBe(3000);
  expect(total(cells.devoiced)).toBe(tokens.filter((t) => t.devoiced).length);
  expect(cells.histogramTokens.reduce((sum, count) => sum + count, 0)).toBe(3000);
  expect(cellsFromTokens([]).size).toBe(0);
});
