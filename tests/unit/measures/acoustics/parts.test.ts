import { describe, expect, test } from "vitest";
import { backgroundLevels, unknownLevelDb } from "../../../../src/measures/acoustics/backgroundLevels.ts";
import { consonantParts } from "../../../../src/measures/acoustics/consonantParts.ts";
import { edgeErrorMs } from "../../../../src/measures/acoustics/edgeError.ts";
import { findRelease } from "../../../../src/measures/acoustics/findRelease.ts";
import { learnSpeaker, voiceLevel } from "../../../../src/measures/acoustics/learnSpeaker.ts";
import { takeSpeakerSample } from "../../../../src/measures/acoustics/speakerSample.ts";
import { analyseVoicing } from "../../../../src/measures/acoustics/voicingFrames.ts";
import { vowelPitch } from "../../../../src/measures/acoustics/vowelPitch.ts";
import { makeWords } from "../../../helpers/makeWords.ts";
import { syntheticVowel } from "../../../helpers/voiceSource.ts";

// pause 0–200, a 200–350, k 350–450 (burst after two thirds, at 417), i 450–550, s 550–670, o 670–820, pause –1000.
const { samples, phones } = makeWords([
  { phone: "pause", ms: 200 },
  { phone: "a", ms: 150 },
  { phone: "k", ms: 100 },
  { phone: "i", ms: 100 },
  { phone: "s", ms: 120 },
  { phone: "o", ms: 150 },
  { phone: "pause", ms: 180 },
]);
const frames = analyseVoicing(samples);
const floor = backgroundLevels(frames, phones);

describe("findRelease", () => {
  test("finds the burst of k within 10 ms", () => {
    expect(Math.abs(findRelease(frames, 360, 445)! - 417)).toBeLessThanOrEqual(10);
  });

  test("finds none in silence", () => {
    expect(findRelease(frames, 30, 150)).toBeNull();
  });
});

describe("consonantParts", () => {
  test("gives closure and release of a stop that add up, and no frication", () => {
    const parts = consonantParts(samples, frames, phones[2]!, floor);
    expect(parts.closureMs! + parts.releaseMs!).toBeCloseTo(100, 6);
    expect([parts.fricationMs, parts.frication, parts.reason]).toEqual([null, null, null]);
  });

  test("gives a fricative its frication, most of its length, and no closure", () => {
    const parts = consonantParts(samples, frames, phones[4]!, floor);
    expect(parts.fricationMs).toBeGreaterThan(90);
    expect(parts.fricationMs).toBeLessThanOrEqual(120);
    expect(parts.closureMs).toBeNull();
  });

  test("says why there is nothing: no obstruent, too short, silence", () => {
    expect(consonantParts(samples, frames, phones[1]!, floor).reason).toBe("not-an-obstruent");
    const k = phones[2]!;
    expect(consonantParts(samples, frames, { ...k, endMs: k.startMs + 15 }, floor).reason).toBe("too-short");
    const nothing = { ...k, startMs: 30, endMs: 150 };
    expect(consonantParts(samples, frames, nothing, floor).reason).toBe("no-release");
    expect(consonantParts(samples, frames, { ...nothing, phone: "s" }, floor).reason).toBe("no-frication");
  });
});

describe("edgeErrorMs", () => {
  test("is small at a true edge and grows as the label moves away from it", () => {
    const errors = [0, 15, 25].map((away) => edgeErrorMs(frames, 550 + away));
    expect(errors[0]).toBeLessThan(12);
    expect(errors[1]!).toBeGreaterThanOrEqual(errors[0]!);
    expect(errors[2]!).toBeGreaterThan(errors[1]!);
  });

  test("is a number at the ends of the recording", () => {
    for (const ms of [0, 3, 998, 1000]) expect(edgeErrorMs(frames, ms)).toBeGreaterThan(0);
  });
});

describe("vowelPitch", () => {
  const range = { low: 60, high: 600 };
  test("gives the pitch of a steady vowel within 0.5 % and no slope to speak of", () => {
    const vowel = analyseVoicing(syntheticVowel(150, [550, 838, 2625], "pulses", 0.3));
    const pitch = vowelPitch(vowel, 50, 250, range);
    expect(Math.abs(pitch.f0Hz! / 150 - 1)).toBeLessThan(0.005);
    expect(Math.abs(pitch.slopeSemitonesPerSec!)).toBeLessThan(0.5);
  });

  test("gives the slope of a glide of one octave a second: 12 semitones/s", () => {
    let phase = 0;
    const glide = Float32Array.from({ length: 8000 }, (_, i) => {
      phase += (2 * Math.PI * 120 * 2 ** (i / 16_000)) / 16_000;
      return 0.3 * (Math.sin(phase) + 0.5 * Math.sin(2 * phase));
    });
    expect(vowelPitch(analyseVoicing(glide), 50, 450, range).slopeSemitonesPerSec!).toBeCloseTo(12, 1);
  });

  test("says why there is none: too short, aperiodic, out of the speaker's range", () => {
    expect(vowelPitch(frames, 210, 220, range).reason).toBe("too-short");
    expect(vowelPitch(frames, 570, 650, range).reason).toBe("aperiodic");
    expect(vowelPitch(frames, 220, 330, { low: 200, high: 400 }).reason).toBe("out-of-range");
  });
});

describe("learnSpeaker", () => {
  test("of nothing still judges: the prior stands and nothing is known of pitch", () => {
    const reference = learnSpeaker([]);
    expect([reference.voicedFrames, reference.voicelessFrames]).toEqual([0, 0]);
    expect(reference.f0MedianHz).toBeNaN();
    expect(reference.classifier.weights.every(Number.isFinite)).toBe(true);
    expect(Number.isFinite(reference.islandLowDb)).toBe(true);
  });

  test("gives the same for the same samples in the same order, and learns the speaker's pitch", () => {
    const sample = takeSpeakerSample(frames, phones);
    expect(learnSpeaker([sample, sample])).toEqual(learnSpeaker([sample, sample]));
    expect(Math.abs(learnSpeaker([sample]).f0MedianHz / 120 - 1)).toBeLessThan(0.02);
  });

  test("voiceLevel keeps a recording's own level unless it lies 10 dB below the speaker's", () => {
    expect([
      voiceLevel(-30, -28),
      voiceLevel(-60, -28),
      voiceLevel(Number.NaN, -28),
      voiceLevel(-33, Number.NaN),
    ]).toEqual([-30, -38, -28, -33]);
  });
});

test("backgroundLevels is unknown for vowels alone and lies below every vowel otherwise", () => {
  expect(backgroundLevels(frames, [phones[1]!])).toEqual([unknownLevelDb, unknownLevelDb, unknownLevelDb]);
  expect(floor[0]).toBeLessThan(Math.min(frames.lowDb[50]!, frames.lowDb[150]!));
});
