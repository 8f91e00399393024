import { expect, test } from "vitest";
import { colouringCounts } from "../../../../reports/components/colouring/colouringCounts.ts";
import type { Colouring } from "../../../../src/estimates/colouring.ts";

const answer = (basis: Colouring["basis"]) =>
  ({ beforeI: { tokens: 12 }, beforeU: { tokens: 34 }, speakers: 5, basis }) as Colouring;

test("colouringCounts tells counts with their basis, and nothing where there is none to state", () => {
  expect(colouringCounts(answer("annotated"))).toMatch(/12.*34.*5 speakers.*marked by a person/);
  expect([colouringCounts(answer(null)), colouringCounts(null)]).toEqual(["", ""]);
});
