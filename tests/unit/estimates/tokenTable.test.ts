import { expect, test } from "vitest";
import { onlyDataset } from "../../../src/estimates/onlyDataset.ts";
import { labelAt, tokenTable, tokenTableOfRows } from "../../../src/estimates/tokenTable.ts";
import { missingTokenColumn, noDataset, raggedTokenColumn } from "../../../src/messages/explain.ts";
import { UserError } from "../../../src/messages/userError.ts";

const row = { dataset: "d", labelSet: "l", speaker: "s", kind: "vowel", phone: "i" };

test("tokenTable keeps labels and numbers, with null and NaN where they are unknown", () => {
  const table = tokenTableOfRows([
    { ...row, accented: true, durationMs: 61.5, index: 7n },
    { ...row, accented: null, durationMs: Number.POSITIVE_INFINITY },
  ]);
  expect([0, 1].map((i) => labelAt(table.labels.accented, i))).toEqual(["true", null]);
  expect([...table.numbers.durationMs]).toEqual([61.5, Number.NaN]);
  expect(table.numbers.index[0]).toBe(7);
  expect([...table.numbers.f1Hz]).toEqual([Number.NaN, Number.NaN]);
});

test("tokenTable refuses a missing and a shorter column", () => {
  const columns = Object.fromEntries(Object.entries(row).map(([name, value]) => [name, [value, value]]));
  const { speaker: _, ...without } = columns;
  expect(() => tokenTable(without)).toThrow(new UserError(missingTokenColumn("speaker")));
  expect(() => tokenTable({ ...columns, word: ["a"] })).toThrow(
    new UserError(raggedTokenColumn("word", 1, 2)),
  );
});

test("onlyDataset keeps one dataset's rows and lists the names when there is none", () => {
  const table = tokenTableOfRows([
    { ...row, durationMs: 1 },
    { ...row, dataset: "e", durationMs: 2 },
  ]);
  expect([...onlyDataset(table, "e").numbers.durationMs]).toEqual([2]);
  expect(() => onlyDataset(table, "f")).toThrow(new UserError(noDataset("f", ["d", "e"])));
});
