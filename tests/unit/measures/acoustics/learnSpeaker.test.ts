import { expect, test } from "vitest";
import { learnSpeaker } from "../../../../src/measures/acoustics/learnSpeaker.ts";
import { type SpeakerSample, sampleDims } from "../../../../src/measures/acoustics/speakerSample.ts";
import { judgeFrames } from "../../../../src/measures/acoustics/voicingDecisions.ts";
import type { VoicingFrames } from "../../../../src/measures/acoustics/voicingFrames.ts";

const voiceDb = -20;
const many = 100;

/** A speaker whose a, e, o have their middle band so far from the low one. */
function speaker(midDb: number): SpeakerSample {
  const rows = (values: readonly number[]) =>
    Float32Array.from({ length: many * sampleDims }, (_, i) => values[i % sampleDims]!);
  return {
    voiced: rows([0.95, 1, 120, voiceDb, voiceDb + midDb, voiceDb + midDb - 10]),
    voiceless: rows([0.3, 0, Number.NaN, voiceDb - 50, voiceDb - 50, voiceDb - 30]),
    voiceDb,
    floorDb: [-100, -100, -100],
    f0Hz: new Float32Array(many).fill(120),
  };
}

/** A periodic sound as loud as the voice, its middle band at this level relative to it. */
function sound(midDb: number): VoicingFrames {
  const fill = (x: number) => new Float32Array(20).fill(x);
  return {
    frames: 20,
    ...{ periodicity: fill(0.95), steadiness: fill(1), f0Hz: fill(120) },
    ...{ lowDb: fill(voiceDb), midDb: fill(voiceDb + midDb), highDb: fill(voiceDb + midDb - 10) },
  };
}

const heard = (usual: number, midDb: number) =>
  judgeFrames(sound(midDb), learnSpeaker([speaker(usual)]), voiceDb, [-100, -100, -100]);

test("learnSpeaker lowers the limit of a hum by as much as a voice is darker than usual, by 25 dB at most", () => {
  const limits = [0, -10, -18, -30, -60].map((usual) => learnSpeaker([speaker(usual)]).islandMidDb);
  expect(limits).toEqual([-45, -45, -53, -65, -70]);
});

test("judgeFrames takes a sound without a middle band for a hum, unless the speaker's vowels have as little", () => {
  expect(heard(-5, -48).logOdds[10]).toBeLessThanOrEqual(-1);
  expect(heard(-5, -48).island[10]).toBe(0);
  expect(heard(-25, -48).logOdds[10]).toBeGreaterThan(1);
  expect(heard(-25, -48).island[10]).toBe(1);
  expect(heard(-25, -62).island[10]).toBe(0);
});
