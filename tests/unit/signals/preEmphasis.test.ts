import { expect, test } from "vitest";
import { preEmphasise } from "../../../src/signals/preEmphasis.ts";

test("preEmphasise(x, c) is x[i] − c·x[i−1] and leaves the input as it was", () => {
  const input = Float32Array.of(1, 2, 4);
  const out = preEmphasise(input, 0.5);
  expect([...out]).toEqual([0.5, 1.5, 3]);
  expect([...input]).toEqual([1, 2, 4]);
});

test("preEmphasise turns a constant into 1 − c of it and lifts the highest frequency to 1 + c", () => {
  expect(preEmphasise(new Float32Array(4).fill(2))[3]).toBeCloseTo(0.06, 6);
  expect(preEmphasise(Float32Array.of(1, -1, 1, -1))[3]).toBeCloseTo(-1.97, 6);
});

test("preEmphasise of nothing is nothing", () => {
  expect(preEmphasise(new Float32Array(0)).length).toBe(0);
});
