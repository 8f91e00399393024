import { expect, test } from "vitest";
import { formatBlocks, ratio, ratioInterval } from "../../../src/cli/printBlocks.ts";

test("ratio is never shown as naught, and keeps its value", () => {
  expect(ratio(0.0001, 2)).toEqual({ text: "< 0.005", value: 0.0001 });
  expect(ratio(0.005, 2).text).toBe("0.01");
  expect(ratio(0, 2).text).toBe("0.00");
  expect(ratio(0.0003, 3).text).toBe("< 0.0005");
});

test("ratioInterval shows both bounds alike, and an open one as a dash", () => {
  expect(ratioInterval({ low: 0.00001, high: 1.5 }, 2).text).toBe("< 0.005 to 1.50");
  expect(ratioInterval({ low: null, high: 1.5 }, 2).text).toBe("–");
});

test("formatBlocks(csv) keeps what stands beside a cell, with and without bounds", () => {
  const cell = { text: "1 to 2", value: null, beside: { "in all": 7 } };
  const block = (row: typeof cell) => ({
    heading: "",
    lines: [],
    keys: {},
    warnings: [],
    rows: [{ odds: row }],
  });
  const csv = (row: typeof cell) =>
    formatBlocks([block(row)], "csv")
      .split(/\r?\n/)
      .slice(0, 2);
  expect(csv({ ...cell, bounds: { low: 1, high: 2 } } as typeof cell)).toEqual([
    "odds low,odds high,in all,warnings",
    "1,2,7,",
  ]);
  expect(csv(cell)[0]).toBe("odds,in all,warnings");
});
