import { expect, test } from "vitest";
import { chooseFormants } from "../../../../src/measures/acoustics/chooseFormants.ts";
import { formantCeiling } from "../../../../src/measures/acoustics/formantCeiling.ts";

const at = (hz: number, bandwidthHz = 100) => ({ hz, bandwidthHz });

test("chooseFormants without a label takes the first three narrow resonances", () => {
  expect(chooseFormants([at(300), at(900, 700), at(1400), at(2300)], null)).toEqual([300, 1400, 2300]);
});

test("chooseFormants takes the broad F2 of u rather than F3 for it", () => {
  expect(chooseFormants([at(340), at(1450, 800), at(3100), at(4000)], "u").slice(0, 2)).toEqual([340, 1450]);
});

test("chooseFormants passes over a resonance between F1 and F2 of i that belongs to neither", () => {
  expect(chooseFormants([at(280), at(900, 600), at(2800), at(3500)], "i")).toEqual([280, 2800, 3500]);
});

test("chooseFormants leaves a formant missing when nothing lies near it, and all when there is nothing", () => {
  expect(chooseFormants([at(280)], "i")).toEqual([280, Number.NaN, Number.NaN]);
  expect(chooseFormants([], "a")).toEqual([Number.NaN, Number.NaN, Number.NaN]);
});

test("chooseFormants keeps the order of frequencies and moves none of them", () => {
  const candidates = [at(500), at(900), at(1500), at(2700), at(3600)];
  const [f1, f2, f3] = chooseFormants(candidates, "o");
  expect(f1).toBeLessThan(f2);
  expect(f2).toBeLessThan(f3);
  for (const hz of [f1, f2, f3]) expect(candidates.some((c) => c.hz === hz)).toBe(true);
});

test("formantCeiling rises with the voice: 5000, 5500 (also when unknown), 6200 Hz", () => {
  expect([110, 200, Number.NaN, 300].map(formantCeiling)).toEqual([5000, 5500, 5500, 6200]);
});
