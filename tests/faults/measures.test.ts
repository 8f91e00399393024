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
const power = (x: Float32Array) => x.reduce((sum, value) => sum + value * value, 0);
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

  test("nothing but NaN from a decoder: silent, counted, no exception", () => {
    const { rows, quality } = measure(new Float32Array(samples.length).fill(Number.NaN), phones);
    expect(quality).toMatchObject({ verdict: "silent", notFinite: samples.length });
    for (const row of vowels(rows)) expect(row.measureReason).toBe("silent");
  });

  test("loud mains hum of 50 Hz and its multiples changes no decision", () => {
    const { rows, quality } = measure(
      samples.map((x, i) => {
        const phase = (2 * Math.PI * 50.03 * i) / 16_000;
        return x + 0.06 * Math.sin(phase) + 0.03 * Math.sin(3 * phase) + 0.01 * Math.sin(5 * phase + 1);
      }),
      phones,
    );
    expect(quality.verdict).toBe("good");
    expect(vowels(rows).map((row) => row.devoicedHeard)).toEqual([false, false, true, false, false]);
  });

  test("sounds shorter than a window at the first and the last sample", () => {
    const short = 12;
    const lastMs = samples.length / 16;
    const edges = ["a", "s", "u", "k"].flatMap((phone) => [
      { phone, startMs: 0, endMs: short, closureEndMs: null },
      { phone, startMs: lastMs - short, endMs: lastMs, closureEndMs: null },
    ]) as MeasuredPhone[];
    for (const phone of edges) {
      const { rows } = measure(samples, [phone]);
      expectFinite(rows);
      expect(rows[0]!.f1Hz).toBeNull();
      expect(rows[0]!.measureReason === null || rows[0]!.measureReason === "too-short").toBe(true);
    }
  });

  test("a child's voice of 450 Hz: its pitch, and no first formant, which lies between two harmonics", () => {
    const child = syntheticVowel(450, [900, 1700, 3600], "flow", 0.3);
    const { rows } = measure(child, [{ phone: "a", startMs: 0, endMs: 300, closureEndMs: null }]);
    expect(Math.abs(rows[0]!.f0Hz! / 450 - 1)).toBeLessThan(0.01);
    expect([rows[0]!.f1Hz, rows[0]!.formantReason]).toEqual([null, "voice-too-high"]);
    expect(rows[0]!.devoicedHeard).toBe(false);
  });

  test("a second talker 20 dB below does not change what is heard of the first", () => {
    const other = syntheticVowel(187, [475, 1738, 2400], "flow", samples.length / 16_000);
    const gain = 0.1 * Math.sqrt(power(samples) / power(other));
    const { rows } = measure(
      samples.map((x, i) => x + gain * (other[i] ?? 0)),
      phones,
    );
    expectFinite(rows);
    const voiced = vowels(rows).filter((_, i) => i !== 2);
    expect(voiced.every((row) => row.devoicedHeard === false || row.devoicedHeard === null)).toBe(true);
  });

  test("a second talker as loud as the first: numbers or reasons, and the recording is not called good", () => {
    const other = syntheticVowel(187, [475, 1738, 2400], "flow", samples.length / 16_000);
    const gain = Math.sqrt(power(samples) / power(other));
    const { rows, quality } = measure(
      samples.map((x, i) => x + gain * (other[i] ?? 0)),
      phones,
    );
    expectFinite(rows);
    expect(quality.verdict).not.toBe("good");
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
