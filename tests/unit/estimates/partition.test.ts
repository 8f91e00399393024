import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import type { Dim } from "../../../src/estimates/dimensions.ts";
import { labelOf, partition, runsOf, sumByPart } from "../../../src/estimates/partition.ts";
import { selectCells, selectWhere } from "../../../src/estimates/selection.ts";
import { sampleTokens } from "./sampleTokens.ts";

const tokens = sampleTokens(2000, 5, 40);
const cells = cellsFromTokens(tokens);
const dims: readonly Dim[] = ["phone", "speaker", "accented"];

test("partition puts each token where grouping the tokens puts it, in the order of the labels", () => {
  const selection = selectCells(cells, [{ dim: "kind", accepts: (kind) => kind === "vowel" }]);
  const parts = partition(cells, selection, dims);
  const sums = sumByPart(parts, cells.tokens);
  const wanted = new Map<string, number>();
  for (const token of tokens.filter((t) => t.kind === "vowel")) {
    const key = [token.phone, token.speaker, token.accented].join();
    wanted.set(key, (wanted.get(key) ?? 0) + 1);
  }
  const nameOf = (part: number) =>
    dims
      .map((dim) => labelOf(cells, parts, part, dim))
      .map((l) => l ?? "")
      .join();
  const names = Array.from({ length: parts.count }, (_, part) => nameOf(part));
  expect(names).toHaveLength(wanted.size);
  for (const [part, name] of names.entries()) expect(sums[part]).toBe(wanted.get(name));
  const codes = Array.from({ length: parts.count }, (_, part) => [
    ...parts.codes.subarray(3 * part, 3 * part + 3),
  ]);
  const sorted = [...codes].sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]! || a[2]! - b[2]!);
  expect(codes).toEqual(sorted);
});

test("runsOf finds the parts that share their first columns", () => {
  const parts = partition(cells, selectCells(cells, []), dims);
  const runs = runsOf(parts, 1);
  expect(runs.map(([from]) => labelOf(cells, parts, from, "phone"))).toEqual(["a", "i", "k", "t", "u"]);
  expect(runs.at(-1)![1]).toBe(parts.count);
  for (const [i, [from]] of runs.entries()) expect(from).toBe(i === 0 ? 0 : runs[i - 1]![1]);
});

test("partition of no cells and by no columns", () => {
  const none = selectWhere(selectCells(cells, []), () => false);
  expect(partition(cells, none, dims)).toMatchObject({ count: 0 });
  expect(partition(cells, selectCells(cells, []), [])).toMatchObject({ count: 1 });
});

test("partition gives the same parts by table and by map", () => {
  const selection = selectCells(cells, []);
  const byTable = partition(cells, selection, dims);
  const byMap = partition(cells, selection, dims, 0);
  expect(byMap.count).toBe(byTable.count);
  expect([...byMap.partOf]).toEqual([...byTable.partOf]);
  expect([...byMap.codes]).toEqual([...byTable.codes]);
});
