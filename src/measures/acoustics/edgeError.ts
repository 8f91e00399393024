import { hopMs, type VoicingFrames } from "./voicingFrames.ts";

/** Changes are looked for this far on either side of an edge. */
const reachMs = 30;
/** Span before and after a frame that is compared. */
const spanFrames = 2;
/** One step of periodicity from 0 to 1 weighs as much as this many dB. */
const periodicityDb = 25;

/**
 * How far the true edge may lie from `edgeMs`, one standard deviation in ms. The likeliest true edge is the greatest
 * spectral change (three band levels and periodicity) within ±30 ms, changes counting less the further they lie off;
 * the result joins its distance from `edgeMs` and half the width of that change at half its height. A burst at the edge
 * gives 5–8, a glide more, an edge set beside a sharp change about its distance. At least half a frame, at most 30.
 * Own measure, no published source.
 */
export function edgeErrorMs(frames: VoicingFrames, edgeMs: number): number {
  const centre = edgeMs / hopMs;
  const reach = reachMs / hopMs;
  const first = Math.max(spanFrames, Math.ceil(centre - reach));
  const last = Math.min(frames.frames - spanFrames, Math.floor(centre + reach));
  const changes: number[] = [];
  let best = -1;
  let bestScore = 0;
  for (let t = first; t <= last; t++) {
    const change = changeAt(frames, t);
    const score = change * (1 - Math.abs(t - centre) / (reach + 1));
    if (score > bestScore) {
      bestScore = score;
      best = changes.length;
    }
    changes.push(change);
  }
  if (best < 0) return reachMs / Math.sqrt(3);
  let from = best;
  let to = best;
  while (from > 0 && changes[from - 1]! > changes[best]! / 2) from--;
  while (to < changes.length - 1 && changes[to + 1]! > changes[best]! / 2) to++;
  const width = ((to - from + 1) * hopMs) / 2;
  return Math.max(
    hopMs / 2,
    Math.min(reachMs, Math.hypot((first + best - centre) * hopMs, width / Math.sqrt(3))),
  );
}

function changeAt(frames: VoicingFrames, t: number): number {
  let sum = 0;
  for (const [values, scale] of [
    [frames.lowDb, 1],
    [frames.midDb, 1],
    [frames.highDb, 1],
    [frames.periodicity, periodicityDb],
  ] as const) {
    let step = 0;
    for (let k = 0; k < spanFrames; k++) step += values[t + k]! - values[t - 1 - k]!;
    sum += ((step * scale) / spanFrames) ** 2;
  }
  return Math.sqrt(sum);
}
