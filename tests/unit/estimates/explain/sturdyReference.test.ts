import { expect, test } from "vitest";
import { sturdyReference } from "../../../../src/estimates/explain/sturdyReference.ts";
import { labelled } from "../../statistics/models/toyData.ts";

const times = (n: number, value: string) => Array.from({ length: n }, () => value);
const column = labelled([...times(30, "a"), ...times(30, "b"), ...times(30, "c")]);
/** a: 2 of 30 devoiced; b: 10 of 30; c: 15 of 30. */
const devoiced = Float64Array.from({ length: 90 }, (_, i) =>
  Number(i % 30 < [2, 10, 15][Math.floor(i / 30)]!),
);

test("sturdyReference is the first level with enough rows of either outcome", () => {
  expect(sturdyReference(column, new Uint8Array(90).fill(1), devoiced)).toEqual({ reference: "b" });
});

test("sturdyReference counts kept rows only, and is none where no level has enough, or for numbers", () => {
  const kept = Uint8Array.from({ length: 90 }, (_, i) => Number(i < 30 || i >= 48));
  expect(sturdyReference(column, kept, devoiced)).toEqual({ reference: "c" });
  expect(sturdyReference(column, new Uint8Array(90), devoiced)).toEqual({});
  expect(sturdyReference(new Float64Array(90), new Uint8Array(90).fill(1), devoiced)).toEqual({});
});
