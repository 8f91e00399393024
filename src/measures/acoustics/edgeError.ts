import { hopMs, type VoicingFrames } from "./voicingFrames.ts";

/** Changes are looked for this far on either side of an edge. */
const reachMs = 30;
/** Span before and after a frame that is compared. */
const spanFrames = 2;
/** One step of periodicity from 0 to 1 weighs as much as this many dB. */
const periodicityDb = 25;

/**
 * How far the true edge may lie from `edgeMs`, one standard deviation in ms: the spread of spectral change (three band
 * levels and periodicity) within ±30 ms about the edge, after the least change was taken off. A sharp burst at the
 * edge gives about 5, a glide 17 (change everywhere alike), an edge set beside the change up to 30. Never below half a frame. Own measure, no published source.
 */
export function edgeErrorMs(frames: VoicingFrames, edgeMs: number): number {
  const centre = edgeMs / hopMs;
  const reach = reachMs / hopMs;
  const first = Math.max(spanFrames, Math.ceil(centre - reach));
  const last = Math.min(frames.frames - spanFrames, Math.floor(centre + reach));
  const changes: number[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (let t = first; t <= last; t++) {
    const change = changeAt(frames, t);
    changes.push(change);
    least = Math.min(least, change);
  }
  let total = 0;
  let spread = 0;
  changes.forEach((change, i) => {
    const weight = (change - least) ** 2;
    total += weight;
    spread += weight * ((first + i - centre) * hopMs) ** 2;
  });
  const flat = reachMs / Math.sqrt(3);
  return total > 0 ? Math.max(hopMs / 2, Math.sqrt(spread / total)) : flat;
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
