import { quantile } from "../../signals/quantile.ts";
import { backgroundLevels } from "./backgroundLevels.ts";
import { isVowelClass, type MeasuredPhone, soundClass } from "./measuredPhone.ts";
import { hopMs, type VoicingFrames } from "./voicingFrames.ts";

/** Values kept of a frame: periodicity, steadiness of F0, F0 in Hz, then the three band levels in dB. */
export const sampleDims = 6;

/**
 * What one recording contributes to its speaker's reference: frames whose voicing is not in doubt, and levels.
 * Small enough to send between threads; concatenate in the order of utterances for the same result on any machine.
 */
export interface SpeakerSample {
  /** Frames × 6 from the middle of a, e, o and nasals. */
  readonly voiced: Float32Array;
  /** Frames × 6 from the middle of voiceless fricatives and of closures. */
  readonly voiceless: Float32Array;
  /** Level of voice in the low band, dB: upper quartile over vowels and nasals; NaN when there are none. */
  readonly voiceDb: number;
  /** Level of the background in low, mid and high band, dB; see `backgroundLevels`. */
  readonly floorDb: readonly [number, number, number];
  /** F0 in the middle of a, e, o and nasals where clearly periodic, Hz. */
  readonly f0Hz: Float32Array;
}

/** Frames of each class kept from one recording, evenly spread; more would only repeat the same voice. */
const keepFrames = 80;

export function takeSpeakerSample(frames: VoicingFrames, phones: readonly MeasuredPhone[]): SpeakerSample {
  const voiced: number[] = [];
  const voiceless: number[] = [];
  const vowelLevels: number[] = [];
  const f0: number[] = [];
  for (const { phone, startMs, endMs } of phones) {
    const kind = soundClass(phone);
    const at = (share: number) => Math.round((startMs + share * (endMs - startMs)) / hopMs - 0.5);
    const push = (to: number[], from: number, end: number) => {
      for (let t = Math.max(0, from); t <= end && t < frames.frames; t++) to.push(t);
    };
    if (isVowelClass(kind) || kind === "nasal") {
      for (let t = Math.max(0, at(0.2)); t <= at(0.8) && t < frames.frames; t++)
        vowelLevels.push(frames.lowDb[t]!);
    }
    if (kind === "other-vowel" || kind === "nasal") push(voiced, at(0.3), at(0.7));
    if (kind === "voiceless-fricative" && phone.startsWith("s")) push(voiceless, at(0.35), at(0.7));
    if ((kind === "voiceless-stop" || kind === "voiceless-closure") && endMs - startMs >= 40) {
      push(voiceless, at(0.3), at(0.55));
    }
  }
  for (const t of voiced) if (frames.periodicity[t]! > 0.8 && frames.f0Hz[t]! > 0) f0.push(frames.f0Hz[t]!);
  return {
    voiced: gather(frames, thin(voiced)),
    voiceless: gather(frames, thin(voiceless)),
    voiceDb: quantile(vowelLevels, 0.75),
    floorDb: backgroundLevels(frames, phones),
    f0Hz: Float32Array.from(thin(f0)),
  };
}

function thin(values: readonly number[]): readonly number[] {
  if (values.length <= keepFrames) return values;
  return Array.from(
    { length: keepFrames },
    (_, k) => values[Math.floor(((k + 0.5) * values.length) / keepFrames)]!,
  );
}

function gather(frames: VoicingFrames, places: readonly number[]): Float32Array {
  const out = new Float32Array(places.length * sampleDims);
  places.forEach((t, k) => {
    out.set(
      [
        frames.periodicity[t]!,
        frames.steadiness[t]!,
        frames.f0Hz[t]!,
        frames.lowDb[t]!,
        frames.midDb[t]!,
        frames.highDb[t]!,
      ],
      k * sampleDims,
    );
  });
  return out;
}
