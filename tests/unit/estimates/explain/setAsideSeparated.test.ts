import { expect, test } from "vitest";
import { setAsideSeparated } from "../../../../src/estimates/explain/setAsideSeparated.ts";
import { labelled } from "../../statistics/models/toyData.ts";

const all = (size: number) => new Uint8Array(size).fill(1);

test("setAsideSeparated takes out levels with one outcome, in rounds until none is left", () => {
  // c is all devoiced; without c, x is never devoiced; without x, the rest is mixed.
  const before = labelled(["a", "a", "b", "b", "c", "c", "a"]);
  const after = labelled(["y", "y", "y", "y", "x", "y", "x"]);
  const devoiced = Float64Array.of(1, 0, 1, 0, 1, 1, 0);
  const { kept, separated } = setAsideSeparated({ before, after }, all(7), devoiced);
  expect([...kept]).toEqual([1, 1, 1, 1, 0, 0, 0]);
  expect(separated).toEqual([
    { term: "before", level: "c", tokens: 2, devoiced: 2 },
    { term: "after", level: "x", tokens: 1, devoiced: 0 },
  ]);
});

test("setAsideSeparated names the levels of a term that tells every outcome, and counts usable rows only", () => {
  const before = labelled(["a", "a", "b", "b"]);
  const whole = setAsideSeparated({ before }, all(4), Float64Array.of(0, 0, 1, 1));
  expect(whole).toEqual({
    kept: all(4),
    separated: [],
    telling: [
      { term: "before", level: "a", tokens: 2, devoiced: 0 },
      { term: "before", level: "b", tokens: 2, devoiced: 2 },
    ],
  });
  const usable = Uint8Array.of(1, 1, 1, 0);
  const { kept, separated } = setAsideSeparated({ before }, usable, Float64Array.of(0, 1, 1, 0));
  expect([...kept]).toEqual([1, 1, 0, 0]);
  expect(separated).toEqual([{ term: "before", level: "b", tokens: 1, devoiced: 1 }]);
});
