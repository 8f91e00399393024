import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { differenceBetween } from "../../../src/estimates/differenceBetween.ts";
import { compareRates } from "../../../src/estimates/rateContrasts.ts";
import { devoicingRates } from "../../../src/estimates/rates.ts";
import { sampleTokens } from "./sampleTokens.ts";

const cells = cellsFromTokens(sampleTokens(3000, 7, 2));
const options = { filter: { vowel: ["i", "u"] }, by: ["phone" as const], level: 0.95 };
const { rows } = devoicingRates(cells, options);
const [i, u] = ["i", "u"].map((phone) => rows.find((row) => row.by.phone === phone)!);

test("differenceBetween two rows is the difference of the two cuts, each speaker against itself", () => {
  const found = differenceBetween(cells, options, i!, u!)!;
  const [wanted] = compareRates(cells, { vowel: ["i"] }, { vowel: ["u"] }).rows;
  expect(found.difference).toBeCloseTo(i!.estimate! - u!.estimate!, 12);
  expect([found.low, found.high, found.p]).toEqual([wanted!.low, wanted!.high, wanted!.p]);
  const strict = differenceBetween(cells, { ...options, level: 0.99 }, i!, u!)!;
  expect(strict.high - strict.low).toBeGreaterThan(found.high - found.low);
});

test("differenceBetween rows of another label set, of marks by a rule, or of no such cut is null", () => {
  expect(differenceBetween(cells, options, i!, { ...u!, labelSet: "other" })).toBeNull();
  const rule = { basis: "predicted" as const };
  expect(differenceBetween(cells, options, { ...i!, ...rule }, { ...u!, ...rule })).toBeNull();
  expect(differenceBetween(cells, options, i!, { ...u!, by: { phone: "o" } })).toBeNull();
});
