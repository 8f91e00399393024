import { expect, test } from "vitest";
import type { VoicingFrames } from "../../../../src/measures/acoustics/voicingFrames.ts";
import type { VowelStretch } from "../../../../src/measures/acoustics/vowelStretch.ts";
import { colourGainDb, wholeVowel } from "../../../../src/measures/acoustics/wholeVowel.ts";

const n = 60;
const frames: VoicingFrames = {
  frames: n,
  periodicity: new Float32Array(n),
  f0Hz: new Float32Array(n),
  steadiness: new Float32Array(n),
  lowDb: new Float32Array(n),
  // Every other frame of the vowel 4 dB higher; C1 (frames 10 to 20) 20 dB below its high band.
  midDb: Float32Array.from({ length: n }, (_, t) => (t < 20 ? -50 : -30 + (t % 2) * 4)),
  highDb: Float32Array.from({ length: n }, (_, t) => (t < 20 ? -30 : -40)),
};
const stretch: VowelStretch = { from: 10, to: 44, vowelFrom: 20, vowelTo: 40, c1From: 10, c2To: 50 };

test("wholeVowel takes the mean log-odds over the labelled vowel and nothing beside it", () => {
  const logOdds = Float32Array.from({ length: n }, (_, t) => (t < 20 ? -8 : t < 30 ? 6 : t < 40 ? 2 : 8));
  expect(wholeVowel(frames, stretch, logOdds).meanLogOdds).toBeCloseTo(4, 9);
});

test("wholeVowel gives the mean step of the middle band from frame to frame", () => {
  expect(wholeVowel(frames, stretch, new Float32Array(n)).midStepDb).toBeCloseTo(4, 6);
  const steady = { ...frames, midDb: new Float32Array(n).fill(-30) };
  expect(wholeVowel(steady, stretch, new Float32Array(n)).midStepDb).toBe(0);
});

test("wholeVowel of a vowel of no length or at the end of the recording is a number", () => {
  for (const at of [0, 30, n]) {
    const none = wholeVowel(frames, { ...stretch, vowelFrom: at, vowelTo: at }, new Float32Array(n).fill(1));
    expect(none.meanLogOdds).toBe(1);
    expect(none.midStepDb).toBeGreaterThanOrEqual(0);
  }
});

test("colourGainDb is what the middle band gains on the high one from C1's middle: −20 to 12 dB", () => {
  expect(colourGainDb(frames, stretch, 30, 4)).toBeCloseTo(32, 6);
});

test("colourGainDb is null without a voiceless C1 of two frames", () => {
  expect(colourGainDb(frames, { ...stretch, c1From: null }, 30, 4)).toBeNull();
  expect(colourGainDb(frames, { ...stretch, c1From: 19 }, 30, 4)).toBeNull();
});
