import { expect, test } from "vitest";
import type { RateRow } from "../../../../src/estimates/rates.ts";
import { countedApart, mainBasis } from "../../../../src/findings/sentences/mainBasis.ts";

const row = (basis: RateRow["basis"], tokens: number, labelSet = "s") =>
  ({ dataset: "d", labelSet, basis, tokens }) as RateRow;

test("mainBasis keeps the basis of most vowels of each label set, the rest apart", () => {
  const rows = [row("annotated", 3), row("measured", 90), row("annotated", 2), row("annotated", 7, "hand")];
  const { main, others } = mainBasis(rows);
  expect(main).toEqual([rows[1], rows[3]]);
  expect(others).toEqual([rows[0], rows[2]]);
  expect(countedApart(others)).toBe(
    "5 more vowels with marks of another basis (annotated) are counted apart.",
  );
});

test("mainBasis of one basis leaves nothing apart, and countedApart says nothing", () => {
  const { main, others } = mainBasis([row("measured", 1)]);
  expect([main.length, others.length, countedApart(others)]).toEqual([1, 0, ""]);
});
