import { describe, expect, test } from "vitest";
import { acousticColumns } from "../../../../src/measures/acousticColumns.ts";
import { learnSpeaker } from "../../../../src/measures/acoustics/learnSpeaker.ts";
import type { MeasuredPhone } from "../../../../src/measures/acoustics/measuredPhone.ts";
import {
  measureUtterance,
  type UtteranceMeasures,
} from "../../../../src/measures/acoustics/measureUtterance.ts";
import { takeSpeakerSample } from "../../../../src/measures/acoustics/speakerSample.ts";
import { analyseVoicing } from "../../../../src/measures/acoustics/voicingFrames.ts";
import { type MadeSound, makeWords } from "../../../helpers/makeWords.ts";

function measure(samples: Float32Array, phones: readonly MeasuredPhone[]): UtteranceMeasures {
  const frames = analyseVoicing(samples);
  const sample = takeSpeakerSample(frames, phones);
  return measureUtterance(samples, phones, sample, learnSpeaker([sample]), frames);
}

/** a s X k a … with the vowel after s voiced or not. */
const word = (vowel: MadeSound): MadeSound[] => [
  { phone: "a", ms: 120 },
  { phone: "s", ms: 110 },
  vowel,
  { phone: "k", ms: 90 },
  { phone: "a", ms: 120 },
  { phone: "n", ms: 70 },
  { phone: "e", ms: 120 },
  { phone: "pause", ms: 250 },
];

describe("measureUtterance", () => {
  const voiced = makeWords([...word({ phone: "u", ms: 60 }), ...word({ phone: "u", ms: 60 })]);
  const devoiced = makeWords([
    ...word({ phone: "u", ms: 60, devoiced: true }),
    ...word({ phone: "u", ms: 60 }),
  ]);

  test("calls a voiced vowel voiced and a whispered one devoiced, with probabilities on either side", () => {
    const heard = measure(voiced.samples, voiced.phones).rows[2]!;
    expect(heard.devoicedHeard).toBe(false);
    expect(heard.devoicedProbability).toBeLessThan(0.2);
    const whispered = measure(devoiced.samples, devoiced.phones).rows[2]!;
    expect(whispered.devoicedHeard).toBe(true);
    expect(whispered.devoicedProbability).toBeGreaterThan(0.8);
    expect(whispered.devoicedByClassifier).toBe(true);
    expect(whispered.devoicedByIsland).toBe(true);
  });

  test("finds a short voiced vowel that the labels gave to the consonant before it", () => {
    const phones = voiced.phones.map((phone, i) =>
      i === 1
        ? { ...phone, endMs: phone.endMs + 50 }
        : i === 2
          ? { ...phone, startMs: phone.startMs + 50 }
          : phone,
    );
    expect(measure(voiced.samples, phones).rows[2]!.devoicedHeard).toBe(false);
  });

  test("does not take a hum in the closure after the vowel, or the end of the vowel before, for the vowel's voice", () => {
    const humming = makeWords([
      ...word({ phone: "u", ms: 60, devoiced: true }).map((s) => (s.phone === "k" ? { ...s, hum: true } : s)),
      ...word({ phone: "u", ms: 60 }),
    ]);
    const phones = humming.phones.map((phone, i) =>
      i === 0
        ? { ...phone, endMs: phone.endMs - 20 }
        : i === 1
          ? { ...phone, startMs: phone.startMs - 20 }
          : phone,
    );
    expect(measure(humming.samples, phones).rows[2]!.devoicedHeard).toBe(true);
  });

  test("is the same at a tenth of the level and with the sign turned", () => {
    const loud = measure(devoiced.samples, devoiced.phones).rows;
    const quiet = measure(
      devoiced.samples.map((x) => -x / 10),
      devoiced.phones,
    ).rows;
    for (const [i, row] of loud.entries()) {
      expect(quiet[i]!.devoicedHeard).toBe(row.devoicedHeard);
      if (row.devoicedProbability !== null) {
        expect(quiet[i]!.devoicedProbability).toBeCloseTo(row.devoicedProbability, 2);
      }
    }
  });

  test("gives every column to every phone, nulls to a pause", () => {
    const { rows } = measure(voiced.samples, voiced.phones);
    for (const row of rows) expect(Object.keys(row).sort()).toEqual(Object.keys(acousticColumns).sort());
    const pause = rows[voiced.phones.findIndex(({ phone }) => phone === "pause")]!;
    expect(Object.values(pause).every((value) => value === null)).toBe(true);
  });

  test("measures F0 and formants of a voiced vowel and gives neither, with a reason, for a devoiced one", () => {
    const [a] = measure(voiced.samples, voiced.phones).rows;
    expect(a!.f0Hz).toBeGreaterThan(115);
    expect(a!.f0Hz).toBeLessThan(125);
    expect(Math.abs(a!.f1Hz! / 775 - 1)).toBeLessThan(0.08);
    const whispered = measure(devoiced.samples, devoiced.phones).rows[2]!;
    expect([whispered.f0Hz, whispered.f1Hz]).toEqual([null, null]);
    expect([whispered.f0Reason, whispered.formantReason]).toEqual(["devoiced", "devoiced"]);
  });

  test("splits k into closure and release, and finds the centre of s in the middle of its noise", () => {
    const { rows } = measure(voiced.samples, voiced.phones);
    expect(Math.abs(rows[3]!.closurePartMs! - 60)).toBeLessThanOrEqual(10);
    expect(rows[3]!.closurePartMs! + rows[3]!.releasePartMs!).toBeCloseTo(90, 6);
    expect(rows[1]!.fricationCentreHz).toBeGreaterThan(4500);
    expect(rows[1]!.fricationMs).toBeGreaterThan(80);
  });
});
