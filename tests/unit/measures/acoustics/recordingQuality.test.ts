import { expect, test } from "vitest";
import { recordingQuality } from "../../../../src/measures/acoustics/recordingQuality.ts";
import { analyseVoicing } from "../../../../src/measures/acoustics/voicingFrames.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";
import { makeWords } from "../../../helpers/makeWords.ts";
import { syntheticVowel } from "../../../helpers/voiceSource.ts";

const { samples, phones } = makeWords([
  { phone: "pause", ms: 200 },
  { phone: "a", ms: 200 },
  { phone: "s", ms: 120 },
  { phone: "o", ms: 200 },
  { phone: "pause", ms: 200 },
]);
const judge = (x: Float32Array) => recordingQuality(x, analyseVoicing(x), phones);
const noisy = (gain: number) => {
  const random = seededRandom(4);
  return samples.map((x) => x + gain * random.normal());
};

test("recordingQuality falls from good over noisy to too noisy as noise is added, and never rises", () => {
  const verdicts = [0, 0.003, 0.03, 0.06, 0.3].map((gain) => judge(noisy(gain)));
  expect(verdicts[0]!.verdict).toBe("good");
  expect(verdicts.at(-1)!.verdict).toBe("too-noisy");
  const levels = verdicts.map(({ voiceAboveBackgroundDb }) => voiceAboveBackgroundDb!);
  expect([...levels].sort((a, b) => b - a)).toEqual(levels);
});

test("recordingQuality does not depend on the level of the recording", () => {
  const db = judge(noisy(0.003)).voiceAboveBackgroundDb!;
  expect(judge(noisy(0.003).map((x) => x / 20)).voiceAboveBackgroundDb).toBeCloseTo(db, 1);
});

test("recordingQuality of vowels alone tells no background rather than a bad one", () => {
  const vowel = syntheticVowel(120, [775, 1163, 2713], "pulses", 0.4);
  const quality = recordingQuality(vowel, analyseVoicing(vowel), [
    { phone: "a", startMs: 0, endMs: 400, closureEndMs: null },
  ]);
  expect([quality.verdict, quality.voiceAboveBackgroundDb]).toEqual(["good", null]);
});

test("recordingQuality counts clipped runs, not single peaks", () => {
  expect(judge(samples).clippedShare).toBe(0);
  const limit = Math.max(...samples.map(Math.abs)) / 3;
  expect(judge(samples.map((x) => Math.max(-limit, Math.min(limit, x)))).clippedShare).toBeGreaterThan(0.001);
});
