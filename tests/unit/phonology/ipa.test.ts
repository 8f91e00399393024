import { expect, test } from "vitest";
import { toIpa } from "../../../src/phonology/ipa.ts";
import { phones } from "../../../src/phonology/phones.ts";

test.each([
  ["u", {}, "\u026f"],
  ["i", { devoiced: true }, "i\u0325"],
  ["u", { devoiced: true }, "\u026f\u0325"],
  ["a", { devoiced: true }, "\u1e01"],
  ["o", { long: true }, "o\u02d0"],
  ["i", { long: true, devoiced: true }, "i\u0325\u02d0"],
  ["t", { long: true }, "t\u02d0"],
  ["t", { devoiced: true }, "t"],
  ["cl", { long: true }, "\u02d0"],
  ["pause", { long: true, devoiced: true }, ""],
] as const)("toIpa(%s, %j) is %s", (phone, options, expected) => {
  expect(toIpa(phone, options)).toBe(expected);
});

test("toIpa(phone) is in NFC for every phone, long or devoiced", () => {
  for (const phone of phones)
    for (const long of [false, true])
      for (const devoiced of [false, true]) {
        const ipa = toIpa(phone, { long, devoiced });
        expect(ipa).toBe(ipa.normalize("NFC"));
      }
});
