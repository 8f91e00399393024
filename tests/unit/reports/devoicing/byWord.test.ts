import { expect, test } from "vitest";
import { ByWord } from "../../../../reports/components/devoicing/byWord.ts";
import { interfaceText } from "../../../../src/interface/interfaceText.ts";
import { rateRow } from "../../findings/rows.ts";

/** Four rates from 70 to 90 %, whose intervals with words are wider by `extra`. */
const remarks = (extra: number) =>
  new ByWord(null).remarks(
    ["a", "i", "u", "e"].map((name) => ({
      name,
      row: rateRow({ crossed: { low: 0.7 - extra, high: 0.9, widest: "words" } }),
    })),
  );

test.each([
  [0.07, "up to 7 points wider"],
  [0.01, "up to 1 point wider"],
  [0.003, "up to 0.3 points wider"],
  [0.0001, "no wider"],
  [0, "no wider"],
  [-0.02, "no wider"],
])("ByWord.remarks says of intervals wider by %d: %s", (extra, told) => {
  const [only] = remarks(extra);
  expect(only).toContain(told);
  expect(only === interfaceText().devoicing.byWord.noWider).toBe(told === "no wider");
});
