import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { mainBasisFilter } from "../../../src/estimates/mainBasisFilter.ts";
import { devoicingRates } from "../../../src/estimates/rates.ts";
import { sampleTokens } from "./sampleTokens.ts";

const measured = sampleTokens(2000, 4, 1).map((token) =>
  token.devoiced === null ? token : { ...token, devoicedBasis: "measured" as const },
);
const corrected = measured.map((token, i) =>
  token.devoiced !== null && i % 9 === 0 ? { ...token, devoicedBasis: "annotated" as const } : token,
);

test("mainBasisFilter keeps a label set's corrected vowels out of its rates and counts them", () => {
  const cells = cellsFromTokens(corrected);
  const { filter, others, bases } = mainBasisFilter(cells, "d1", "full");
  const isCorrected = corrected.filter(({ devoicedBasis }) => devoicedBasis === "annotated").length;
  expect(isCorrected).toBeGreaterThan(50);
  expect([filter, others, bases]).toEqual([{ devoicedBasis: "measured" }, isCorrected, ["annotated"]]);
  const { rows } = devoicingRates(cells, { filter });
  const left = corrected.filter(({ devoicedBasis }) => devoicedBasis === "measured");
  expect(rows.map(({ basis, tokens, devoiced }) => [basis, tokens, devoiced])).toEqual([
    ["measured", left.length, left.filter(({ devoiced }) => devoiced).length],
  ]);
});

test("mainBasisFilter restricts nothing where all marks came about alike, or there is no such set", () => {
  const cells = cellsFromTokens(measured);
  expect(mainBasisFilter(cells, "d1", "full")).toEqual({ filter: {}, others: 0, bases: [] });
  expect(mainBasisFilter(cells, "d1", "other")).toEqual({ filter: {}, others: 0, bases: [] });
});
