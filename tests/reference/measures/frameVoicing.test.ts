import { join } from "node:path";
import { expect, test } from "vitest";
import { degrade } from "../../../data/demo/make/degrade.ts";
import { randomFor } from "../../../data/demo/make/random.ts";
import { learnSpeaker, voiceLevel } from "../../../src/measures/acoustics/learnSpeaker.ts";
import { takeSpeakerSample } from "../../../src/measures/acoustics/speakerSample.ts";
import { judgeFrames } from "../../../src/measures/acoustics/voicingDecisions.ts";
import { analyseVoicing, hopMs } from "../../../src/measures/acoustics/voicingFrames.ts";
import { isVoiceless } from "../../../src/phonology/phones.ts";
import { type KnownUtterance, readKnownSpeech } from "../../helpers/knownSpeech.ts";

// Every sixth recording of the demo: frames of phones that the synthesiser spoke wholly with or without voice, and that
// can be so: it also "voices" some pauses, which are silent, and a few voiceless consonants, which are left out.
const speech = (await readKnownSpeech(join(import.meta.dirname, "../../../data/demo"), 6))!;

/** Share of the frames of such phones that the classifier judges as the synthesiser spoke them. */
function rightFrames(utterances: readonly KnownUtterance[]): number {
  let right = 0;
  let all = 0;
  for (const speaker of new Set(utterances.map((u) => u.speaker))) {
    const prepared = utterances
      .filter((u) => u.speaker === speaker)
      .map((u) => {
        const frames = analyseVoicing(u.samples);
        return { u, frames, sample: takeSpeakerSample(frames, u.phones) };
      });
    const reference = learnSpeaker(prepared.map(({ sample }) => sample));
    for (const { u, frames, sample } of prepared) {
      const voiceDb = voiceLevel(sample.voiceDb, reference.voiceDb);
      const { logOdds } = judgeFrames(frames, reference, voiceDb, sample.floorDb);
      for (const { phone, voicedShare, startMs, endMs, closureEndMs } of u.phones) {
        const mixed = closureEndMs !== null || (voicedShare! > 0.05 && voicedShare! < 0.95);
        const odd = voicedShare! > 0.5 && (phone === "pause" || isVoiceless(phone));
        if (mixed || odd) continue;
        const end = Math.min(frames.frames, Math.floor(endMs / hopMs));
        for (let t = Math.ceil(startMs / hopMs); t < end; t++) {
          all++;
          if (logOdds[t]! > 0 === voicedShare! > 0.5) right++;
        }
      }
    }
  }
  expect(all).toBeGreaterThan(10_000);
  return right / all;
}

test("judgeFrames is right in 97 % of frames, clean", () => {
  expect(rightFrames(speech)).toBeGreaterThanOrEqual(0.97);
});

test("judgeFrames is right in 93 % of frames in a room of 0.3 s with noise at 20 dB", () => {
  const random = randomFor("frame voicing");
  const spoilt = speech.map((u) => ({
    ...u,
    samples: Float32Array.from(degrade(Float64Array.from(u.samples), { snrDb: 20, rt60Sec: 0.3 }, random)),
  }));
  expect(rightFrames(spoilt)).toBeGreaterThanOrEqual(0.93);
});
