import { expect, test } from "vitest";
import type { Cells } from "../../../src/estimates/cells.ts";
import { cellsFromColumns } from "../../../src/estimates/cellsFromColumns.ts";
import { decodeCells, encodeCells, isCompact } from "../../../src/publish/compactCells.ts";
import { type Invention, inventSpeech } from "../../pages/fixtures/inventSpeech.ts";

const invention: Invention = {
  ...{ dataset: "d", labelSet: "l", speakers: 3, phrasesPerSpeaker: 60, floorMs: 5, seed: 5 },
  devoicedBasis: "annotated",
};

function cellsOf(stretch: number): Cells {
  const rows = inventSpeech(invention);
  const columns = Object.fromEntries(
    Object.keys(rows[0]!).map((name) => [
      name,
      rows.map((row) => (row as unknown as Record<string, unknown>)[name]),
    ]),
  );
  const cells = cellsFromColumns(columns);
  return {
    ...cells,
    sumMs: cells.sumMs.map((sum) => sum * stretch),
    sumSquareMs: cells.sumSquareMs.map((sum) => sum * stretch ** 2),
    sumLogMs: cells.sumLogMs.map((sum, i) => sum + cells.tokens[i]! * Math.log(stretch)),
    sumSquareLogMs: cells.sumSquareLogMs.map(
      (sum, i) =>
        sum + 2 * cells.sumLogMs[i]! * Math.log(stretch) + cells.tokens[i]! * Math.log(stretch) ** 2,
    ),
  };
}

function expectSame(made: Cells, cells: Cells): void {
  const { sumMs, sumSquareMs, sumLogMs, sumSquareLogMs, ...rest } = cells;
  expect(made).toMatchObject(rest);
  for (const [name, sums] of Object.entries({ sumMs, sumSquareMs, sumLogMs, sumSquareLogMs })) {
    const got = made[name as "sumMs"];
    for (let i = 0; i < sums.length; i++)
      expect(Math.abs(got[i]! - sums[i]!), `${name} of cell ${i}`).toBeLessThan(
        1e-11 * Math.max(1, sums[i]!),
      );
  }
}

test("decodeCells gives back what encodeCells took, durations in whole ms", () => {
  const cells = cellsOf(1);
  const bytes = encodeCells(cells);
  expect(isCompact(bytes.buffer as ArrayBuffer)).toBe(true);
  expectSame(decodeCells(bytes.buffer as ArrayBuffer), cells);
});

test("decodeCells gives back sums that do not follow from whole ms, bit by bit where several tokens share a cell", () => {
  const cells = cellsOf(1.000123);
  const made = decodeCells(encodeCells(cells).buffer as ArrayBuffer);
  expectSame(made, cells);
  const several = [...cells.tokens.keys()].filter((i) => cells.tokens[i]! > 1);
  expect(several.length).toBeGreaterThan(50);
  for (const i of several) expect(made.sumLogMs[i]).toBe(cells.sumLogMs[i]);
});

test("decodeCells refuses what is cut short or something else", () => {
  const bytes = encodeCells(cellsOf(1));
  expect(() => decodeCells(bytes.slice(0, bytes.length - 5).buffer as ArrayBuffer)).toThrow("cut short");
  expect(() => decodeCells(new TextEncoder().encode("PAR1 and more of it…").buffer as ArrayBuffer)).toThrow(
    "kind",
  );
  expect(isCompact(new ArrayBuffer(3))).toBe(false);
});
