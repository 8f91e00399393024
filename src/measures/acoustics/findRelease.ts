import { hopMs, type VoicingFrames } from "./voicingFrames.ts";

/** Rise of the level above 600 Hz that counts as a release, dB. */
const releaseRiseDb = 8;

/** Frames after the rise in which its highest level is looked for: 30 ms. */
const burstFrames = 6;

/**
 * Release of a stop or affricate: the place in `[fromMs, toMs]` where the level above 600 Hz rises most, from the three
 * frames before to the two frames after, at least 8 dB; there, the first frame within 6 dB of the burst's highest, since
 * a frame of 25 ms sees a burst before its centre reaches it. Time in ms, null when nothing rises so far.
 */
export function findRelease(frames: VoicingFrames, fromMs: number, toMs: number): number | null {
  const first = Math.max(3, Math.round(fromMs / hopMs));
  const last = Math.min(frames.frames - 2, Math.round(toMs / hopMs));
  let best = releaseRiseDb;
  let place = -1;
  for (let t = first; t <= last; t++) {
    const before = Math.max(upper(frames, t - 3), upper(frames, t - 2), upper(frames, t - 1) - 6);
    const rise = Math.max(upper(frames, t), upper(frames, t + 1)) - before;
    if (rise > best) {
      best = rise;
      place = t;
    }
  }
  if (place < 0) return null;
  const end = Math.min(frames.frames, place + burstFrames);
  let highest = Number.NEGATIVE_INFINITY;
  for (let t = place; t < end; t++) highest = Math.max(highest, upper(frames, t));
  while (place < end - 1 && upper(frames, place) < highest - 6) place++;
  return Math.min(toMs, (place + 0.5) * hopMs);
}

function upper(frames: VoicingFrames, t: number): number {
  return Math.max(frames.midDb[t]!, frames.highDb[t]!);
}
