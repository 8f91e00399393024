import type { VoicingFrames } from "./voicingFrames.ts";
import type { VowelStretch } from "./vowelStretch.ts";

/** Frames on either side of C1's middle over which its colour is averaged. */
const aboutMiddle = 2;

/** What is heard over the whole of a vowel as labelled or aligned, not at its best place. */
export interface WholeVowel {
  /** Mean log-odds of voice. */
  readonly meanLogOdds: number;
  /** Mean step of the middle band from frame to frame, dB: creaky voice, pulse by pulse, is rougher than a whisper. */
  readonly midStepDb: number;
}

export function wholeVowel(frames: VoicingFrames, stretch: VowelStretch, logOdds: Float32Array): WholeVowel {
  const from = Math.min(stretch.vowelFrom, frames.frames - 1);
  const to = Math.max(from + 1, stretch.vowelTo);
  let odds = 0;
  for (let t = from; t < to; t++) odds += logOdds[t]!;
  let steps = 0;
  let count = 0;
  for (let t = from + 1; t <= to && t < frames.frames; t++) {
    steps += Math.abs(frames.midDb[t]! - frames.midDb[t - 1]!);
    count++;
  }
  return { meanLogOdds: odds / (to - from), midStepDb: count === 0 ? 0 : steps / count };
}

/**
 * How much more the middle band outweighs the high one at `[at, at + width)` than in the middle of a voiceless C1, dB:
 * C1's frication goes, the vowel's formants come. Null without a voiceless C1 of two frames.
 */
export function colourGainDb(
  frames: VoicingFrames,
  stretch: VowelStretch,
  at: number,
  width: number,
): number | null {
  const { c1From, vowelFrom } = stretch;
  if (c1From === null || vowelFrom - c1From < 2) return null;
  const middle = c1From + Math.floor((vowelFrom - c1From) / 2);
  const before = colour(frames, middle - aboutMiddle, middle + aboutMiddle + 1);
  return colour(frames, at, at + width) - before;
}

function colour({ frames, midDb, highDb }: VoicingFrames, from: number, to: number): number {
  const first = Math.max(0, from);
  const end = Math.min(frames, to);
  let sum = 0;
  for (let t = first; t < end; t++) sum += midDb[t]! - highDb[t]!;
  return sum / Math.max(1, end - first);
}
