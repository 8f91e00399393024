import { expect, test } from "vitest";
import { normalisedPvi, rawPvi } from "../../../../src/estimates/timing/pairwiseVariability.ts";
import { rhythmOf, type TimedPhone } from "../../../../src/estimates/timing/rhythm.ts";
import { rhythmBySpeaker } from "../../../../src/estimates/timing/rhythmBySpeaker.ts";
import { timedTokens } from "./timedTokens.ts";

// Checks of the formulas of Grabe E. & Low E. L. (2002), worked out by hand.
test("normalisedPvi and rawPvi give the values of the formulas", () => {
  expect(normalisedPvi([1, 3])).toBe(100);
  expect(normalisedPvi([100, 200, 100, 200])).toBeCloseTo(66.6667, 4);
  expect(normalisedPvi([70, 70, 70])).toBe(0);
  expect(rawPvi([1, 3])).toBe(2);
  expect(normalisedPvi([5])).toBeNaN();
});

test("normalisedPvi does not change with speech rate", () => {
  const durations = [80, 55, 120, 60, 61];
  expect(normalisedPvi(durations.map((d) => d / 3))).toBeCloseTo(normalisedPvi(durations), 12);
});

const phones = (text: string): TimedPhone[] =>
  text.split(" ").map((phone) => ({
    kind: phone[0] === "V" ? "vowel" : "consonant",
    durationMs: Number(phone.slice(1)),
  }));

test("rhythmOf joins neighbouring vowels and neighbouring consonants before it measures", () => {
  // Vocalic stretches 100 and 60 ms, consonantal 50, 90 and 40 ms.
  const got = rhythmOf(phones("C50 V40 V60 C30 C60 V60 C40"))!;
  expect(got.vowelPercent).toBeCloseTo((100 * 160) / 340, 12);
  expect(got.deltaVowelMs).toBeCloseTo(20, 12);
  expect(got.deltaConsonantMs).toBeCloseTo(Math.sqrt((10 ** 2 + 30 ** 2 + 20 ** 2) / 3), 12);
  expect(got.vowelNpvi).toBeCloseTo(50, 12);
  expect(got.consonantRpviMs).toBeCloseTo((40 + 50) / 2, 12);
});

test("rhythmOf says null where there is too little", () => {
  expect(rhythmOf([])).toBeNull();
  expect(rhythmOf(phones("V80"))).toEqual({
    ...{
      vowelPercent: 100,
      deltaVowelMs: null,
      deltaConsonantMs: null,
      vowelNpvi: null,
      consonantRpviMs: null,
    },
  });
});

test("rhythmBySpeaker is the mean over speakers of their stretches", () => {
  const tokens = [
    ...timedTokens(
      "a",
      "u1",
      ["ka", "ta"],
      [
        [50, 100],
        [70, 80],
      ],
    ),
    ...timedTokens(
      "b",
      "u2",
      ["ka", "ta"],
      [
        [50, 50],
        [50, 50],
      ],
    ),
  ];
  const got = rhythmBySpeaker(tokens)!;
  expect(got.vowelPercent).toMatchObject({ estimate: (60 + 50) / 2, speakers: 2 });
  expect(got.perSpeaker.get("a")!.vowelNpvi).toBeCloseTo((100 * 20) / 90, 10);
  expect(got.vowelPercent!.low).toBeLessThan(50);
  expect(rhythmBySpeaker([])).toBeNull();
});
