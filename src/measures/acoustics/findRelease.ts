import { hopMs, type VoicingFrames } from "./voicingFrames.ts";

/** Rise of the level above 600 Hz that counts as a release, dB. */
const releaseRiseDb = 8;

/**
 * Release of a stop or affricate: the place in `[fromMs, toMs]` where the level above 600 Hz rises most, from the three
 * frames before to the two frames after, at least 8 dB. Time in ms, null when nothing rises so far.
 */
export function findRelease(frames: VoicingFrames, fromMs: number, toMs: number): number | null {
  const first = Math.max(3, Math.round(fromMs / hopMs));
  const last = Math.min(frames.frames - 2, Math.round(toMs / hopMs));
  let best = releaseRiseDb;
  let place: number | null = null;
  for (let t = first; t <= last; t++) {
    const before = Math.max(upper(frames, t - 3), upper(frames, t - 2), upper(frames, t - 1) - 6);
    const rise = Math.max(upper(frames, t), upper(frames, t + 1)) - before;
    if (rise > best) {
      best = rise;
      place = t * hopMs;
    }
  }
  return place;
}

function upper(frames: VoicingFrames, t: number): number {
  return Math.max(frames.midDb[t]!, frames.highDb[t]!);
}
