import { quantile } from "../../signals/quantile.ts";
import type { F0Range } from "./frameEvidence.ts";
import { hopMs, type VoicingFrames } from "./voicingFrames.ts";

export type PitchReason = "devoiced" | "too-short" | "aperiodic" | "unsteady" | "out-of-range";

/** Pitch of one vowel; null where unreliable, with the reason. */
export interface VowelPitch {
  readonly f0Hz: number | null;
  /** Slope of the least-squares line through log F0, semitones per second; null with fewer than five frames. */
  readonly slopeSemitonesPerSec: number | null;
  readonly reason: PitchReason | null;
}

/** Frames below this periodicity give no pitch. */
const periodic = 0.6;
const fewest = 3;
/** Frames further than this from the median are jumps, as a factor. */
const jump = 1.25;

/** Median and slope of F0 over the clearly periodic frames of `[startMs, endMs]`; octave jumps are left out. */
export function vowelPitch(
  frames: VoicingFrames,
  startMs: number,
  endMs: number,
  range: F0Range,
): VowelPitch {
  const first = Math.max(0, Math.round(startMs / hopMs));
  const last = Math.min(frames.frames - 1, Math.round(endMs / hopMs) - 1);
  const none = (reason: PitchReason): VowelPitch => ({ f0Hz: null, slopeSemitonesPerSec: null, reason });
  if (last - first + 1 < fewest) return none("too-short");
  const places: number[] = [];
  for (let t = first; t <= last; t++)
    if (frames.periodicity[t]! >= periodic && frames.f0Hz[t]! > 0) places.push(t);
  if (places.length < fewest) return none("aperiodic");
  const median = quantile(
    places.map((t) => frames.f0Hz[t]!),
    0.5,
  );
  const near = places.filter((t) => frames.f0Hz[t]! < median * jump && frames.f0Hz[t]! > median / jump);
  if (near.length < Math.max(fewest, places.length / 2)) return none("unsteady");
  const f0Hz = quantile(
    near.map((t) => frames.f0Hz[t]!),
    0.5,
  );
  if (f0Hz < range.low || f0Hz > range.high) return none("out-of-range");
  return { f0Hz, slopeSemitonesPerSec: near.length < 5 ? null : slope(near, frames.f0Hz), reason: null };
}

function slope(places: readonly number[], f0Hz: Float32Array): number {
  const n = places.length;
  const meanPlace = places.reduce((a, t) => a + t, 0) / n;
  let cross = 0;
  let square = 0;
  for (const t of places) {
    cross += (t - meanPlace) * 12 * Math.log2(f0Hz[t]!);
    square += (t - meanPlace) ** 2;
  }
  return ((cross / square) * 1000) / hopMs;
}
