import { expect, test } from "vitest";
import { fromTaggedJson, toTaggedJson } from "../../../src/storage/taggedJson.ts";

test("fromTaggedJson(toTaggedJson(value)) gives numbers that JSON lacks and typed arrays back, bit by bit", () => {
  const value = {
    numbers: [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -0, 0.1 + 0.2, 5e-324],
    arrays: [Float64Array.of(Number.NaN, -0), Float32Array.of(0.1), Int32Array.of(-7), Uint8Array.of(255)],
    nested: { text: '"$number"', none: null, yes: true },
  };
  expect(fromTaggedJson(toTaggedJson(value))).toEqual(value);
  expect(Object.is((fromTaggedJson(toTaggedJson(value)) as typeof value).numbers[3], -0)).toBe(true);
});

test("toTaggedJson(value) of a part of a larger buffer holds that part alone", () => {
  const part = Float64Array.of(1, 2, 3, 4).subarray(1, 3);
  expect(fromTaggedJson(toTaggedJson(part))).toEqual(Float64Array.of(2, 3));
});
