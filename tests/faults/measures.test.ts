import { describe, expect, test } from "vitest";
import type { AcousticRow } from "../../src/measures/acousticColumns.ts";
import { learnSpeaker } from "../../src/measures/acoustics/learnSpeaker.ts";
import type { MeasuredPhone } from "../../src/measures/acoustics/measuredPhone.ts";
import { measureUtterance, type UtteranceMeasures } from "../../src/measures/acoustics/measureUtterance.ts";
import { takeSpeakerSample } from "../../src/measures/acoustics/speakerSample.ts";
import { analyseVoicing } from "../../src/measures/acoustics/voicingFrames.ts";
import { seededRandom } from "../../src/statistics/seededRandom.ts";
import { type MadeSound, makeWords } from "../helpers/makeWords.ts";
import { syntheticVowel } from "../helpers/voiceSource.ts";

function measure(samples: Float32Array, phones: readonly MeasuredPhone[]): UtteranceMeasures {
  const frames = analyseVoicing(samples);
  const sample = takeSpeakerSample(frames, phones);
  return measureUtterance(samples, phones, sample, learnSpeaker([sample]), frames);
}

const sounds: MadeSound[] = [
  { phone: "pause", ms: 200 },
  { phone: "k", ms: 90 },
  { phone: "a", ms: 120 },
  { phone: "s", ms: 110 },
  { phone: "u", ms: 60 },
  { phone: "k", ms: 90 },
  { phone: "i", ms: 70, devoiced: true },
  { phone: "t", ms: 90 },
  { phone: "e", ms: 120 },
  { phone: "n", ms: 70 },
  { phone: "o", ms: 150 },
  { phone: "pause", ms: 200 },
];
const { samples, phones } = makeWords(sounds);
const vowels = (rows: readonly AcousticRow[]) => rows.filter((_, i) => "aiueo".includes(phones[i]!.phone));
/** Every number is a number: nothing leaks out as NaN or infinity. */
function expectFinite(rows: readonly AcousticRow[]): void {
  for (const row of rows) {
    for (const [column, value] of Object.entries(row)) {
      if (typeof value === "number") expect(Number.isFinite(value), column).toBe(true);
    }
  }
}

describe("measureUtterance on bad input gives nulls with reasons and never throws", () => {
  test("the sound as made is judged right, so that what follows has a base", () => {
    const { rows, quality } = measure(samples, phones);
    expect(quality.verdict).toBe("good");
    expect(vowels(rows).map((row) => row.devoicedHeard)).toEqual([false, false, true, false, false]);
    expectFinite(rows);
  });

  test("digital silence: the recording is silent and says so in every row", () => {
    const { rows, quality } = measure(new Float32Array(samples.length), phones);
    expect(quality.verdict).toBe("silent");
    expect(quality.voiceAboveBackgroundDb).toBeNull();
    for (const row of vowels(rows)) {
      expect(row.measureReason).toBe("silent");
      expect(row.devoicedHeard).toBeNull();
    }
  });

  test("no samples at all, and no phones at all", () => {
    expect(measure(new Float32Array(0), phones).quality.verdict).toBe("silent");
    expect(measure(samples, []).rows).toEqual([]);
    expect(measure(new Float32Array(0), []).rows).toEqual([]);
  });

  test("intervals beyond the end of the audio", () => {
    const { rows } = measure(samples.subarray(0, samples.length / 2), phones);
    expect(rows.at(-2)!.measureReason).toBe("outside-audio");
    expect(rows[2]!.measureReason).toBeNull();
    expectFinite(rows);
  });

  test("speech that starts with the first and ends with the last sample", () => {
    const tight = makeWords(sounds.slice(1, -1));
    const { rows } = measure(tight.samples, tight.phones);
    expect(rows[1]!.devoicedHeard).toBe(false);
    expect(rows.at(-1)!.devoicedHeard).toBe(false);
    expectFinite(rows);
  });

  test("a consonant of 4 ms, a vowel of 0 ms: reason, or a decision from the stretch around it", () => {
    const short = phones.map((phone, i) =>
      i === 3 ? { ...phone, endMs: phone.startMs + 4 } : i === 4 ? { ...phone, startMs: phone.endMs } : phone,
    );
    const { rows } = measure(samples, short);
    expect(rows[3]!.measureReason).toBe("too-short");
    expect(rows[4]!.f1Hz).toBeNull();
    expectFinite(rows);
  });

  test("direct current of a fifth of full scale changes no decision", () => {
    const { rows, quality } = measure(
      samples.map((x) => x + 0.2),
      phones,
    );
    expect(quality.offset).toBeCloseTo(0.2, 2);
    expect(vowels(rows).map((row) => row.devoicedHeard)).toEqual([false, false, true, false, false]);
  });

  test("clipping by 12 dB changes no decision and is counted", () => {
    const limit = samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0) / 4;
    const { rows, quality } = measure(
      samples.map((x) => Math.max(-limit, Math.min(limit, x))),
      phones,
    );
    expect(quality.clippedShare).toBeGreaterThan(0.005);
    expect(vowels(rows).map((row) => row.devoicedHeard)).toEqual([false, false, true, false, false]);
  });

  test("NaN and infinity from a decoder count as silence and are counted", () => {
    const broken = Float32Array.from(samples);
    broken.fill(Number.NaN, 3000, 3050);
    broken[9000] = Number.POSITIVE_INFINITY;
    const { rows, quality } = measure(broken, phones);
    expect(quality.notFinite).toBe(51);
    expectFinite(rows);
  });

  test("a voice above the range of the search gives no F0 rather than an octave below", () => {
    const shriek = syntheticVowel(820, [900, 1700, 3000], "pulses", 0.3);
    const { rows } = measure(shriek, [{ phone: "a", startMs: 0, endMs: 300, closureEndMs: null }]);
    expectFinite(rows);
    expect(rows[0]!.f1Hz === null || rows[0]!.f0Hz === null || rows[0]!.f0Hz < 600).toBe(true);
  });

  test("two talkers at once: a pitch, or a reason why there is none", () => {
    const low = syntheticVowel(110, [775, 1163, 2713], "pulses", 0.3);
    const high = syntheticVowel(187, [475, 1738, 2400], "flow", 0.3);
    const both = low.map((x, i) => x + high[i]!);
    const { rows } = measure(both, [{ phone: "a", startMs: 0, endMs: 300, closureEndMs: null }]);
    expect((rows[0]!.f0Hz === null) !== (rows[0]!.f0Reason === null)).toBe(true);
    expectFinite(rows);
  });

  test("noise as loud as the speech: too noisy, and every row says so", () => {
    const random = seededRandom(2);
    const { rows, quality } = measure(
      samples.map((x) => x + 0.2 * random.normal()),
      phones,
    );
    expect(quality.verdict).toBe("too-noisy");
    for (const row of vowels(rows)) expect(row.measureReason).toBe("too-noisy");
  });

  test("labels that run backwards or overlap", () => {
    const { rows } = measure(samples, [...phones].reverse());
    expect(rows.length).toBe(phones.length);
    expectFinite(rows);
  });
});
