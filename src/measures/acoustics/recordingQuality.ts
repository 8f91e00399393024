import { quantile } from "../../signals/quantile.ts";
import { backgroundLevels, unknownLevelDb } from "./backgroundLevels.ts";
import { isVowelClass, type MeasuredPhone, soundClass } from "./measuredPhone.ts";
import { hopMs, type VoicingFrames } from "./voicingFrames.ts";

export type QualityVerdict = "good" | "noisy" | "too-noisy" | "silent";

/** How far a recording can be judged. */
export interface RecordingQuality {
  readonly verdict: QualityVerdict;
  /** Level of the vowels above the background in the low band (where voicing is decided), dB; null when silent or unknown. */
  readonly voiceAboveBackgroundDb: number | null;
  /** Share of samples that stand at the recording's extremes in runs of three or more, 0 … 1. */
  readonly clippedShare: number;
  /** Mean of the samples relative to full scale; what is not 0 is direct current. */
  readonly offset: number;
  /** Samples that are not finite, as some decoders give. */
  readonly notFinite: number;
}

/**
 * Read off the degradation table of `npm run bench -- measures`: at 22 dB the devoicing decision has lost 1.5 to 3 points
 * of F1 on synthetic speech (falling noise at 15 dB SNR), at 13 dB 8 (5 dB SNR) and at 9 dB 13 (0 dB).
 */
export const noisyBelowDb = 22;
export const tooNoisyBelowDb = 12;
const silentDb = -90;

/**
 * Judges one recording from its samples, its labelled vowels (all frames when there are none), pauses and voiceless
 * sounds. Digital silence between words counts as no background at all.
 */
export function recordingQuality(
  samples: Float32Array,
  frames: VoicingFrames,
  phones: readonly MeasuredPhone[],
): RecordingQuality {
  const { offset, clippedShare, notFinite } = sampleFaults(samples);
  const vowels: number[] = [];
  for (const { phone, startMs, endMs } of phones) {
    if (!isVowelClass(soundClass(phone))) continue;
    const last = Math.min(frames.frames, Math.round(endMs / hopMs));
    for (let t = Math.max(0, Math.round(startMs / hopMs)); t < last; t++) vowels.push(frames.lowDb[t]!);
  }
  const voice = quantile(vowels.length > 0 ? vowels : frames.lowDb, 0.75);
  if (!(voice > silentDb)) {
    return { verdict: "silent", voiceAboveBackgroundDb: null, clippedShare, offset, notFinite };
  }
  const [background] = backgroundLevels(frames, phones);
  if (background <= unknownLevelDb) {
    return { verdict: "good", voiceAboveBackgroundDb: null, clippedShare, offset, notFinite };
  }
  const voiceAboveBackgroundDb = voice - background;
  const tooNoisy = voiceAboveBackgroundDb < tooNoisyBelowDb;
  const verdict = tooNoisy ? "too-noisy" : voiceAboveBackgroundDb < noisyBelowDb ? "noisy" : "good";
  return { verdict, voiceAboveBackgroundDb, clippedShare, offset, notFinite };
}

function sampleFaults(
  samples: Float32Array,
): Pick<RecordingQuality, "clippedShare" | "offset" | "notFinite"> {
  let highest = 0;
  let sum = 0;
  let notFinite = 0;
  for (let i = 0; i < samples.length; i++) {
    const x = samples[i]!;
    if (!Number.isFinite(x)) {
      notFinite++;
      continue;
    }
    sum += x;
    if (Math.abs(x) > highest) highest = Math.abs(x);
  }
  let clipped = 0;
  let run = 0;
  const limit = highest * 0.999;
  for (let i = 0; i < samples.length; i++) {
    const at = highest > 0.01 && Math.abs(samples[i]!) >= limit;
    if (at) run++;
    if ((!at || i === samples.length - 1) && run > 0) {
      if (run >= 3) clipped += run;
      run = 0;
    }
  }
  const n = Math.max(1, samples.length);
  return { clippedShare: clipped / n, offset: sum / n, notFinite };
}
