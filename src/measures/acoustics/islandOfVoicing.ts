import { hopMs } from "./voicingFrames.ts";
import { lateFrames, ownFrames, type VowelStretch } from "./vowelStretch.ts";

/** Shortest island that makes a vowel voiced: two to four periods of a voice. */
export const shortestIslandMs = 20;

/**
 * The second decision: longest unbroken run of frames with vowel-like voice in the stretch, in ms; gaps of one frame
 * are bridged. A run that only starts well after the vowel is a hum in C2's closure and does not count.
 */
export function islandOfVoicing(stretch: VowelStretch, island: Uint8Array): number {
  const own = ownFrames(stretch, (t) => island[t] === 1);
  let longest = 0;
  let start = -1;
  let last = -1;
  for (let t = own.from; t <= own.to; t++) {
    if (t < own.to && island[t] === 1) {
      if (start < 0) start = t;
      last = t;
    } else if (start >= 0 && (t >= own.to || t - last > 1)) {
      if (start <= stretch.vowelTo + lateFrames) longest = Math.max(longest, last - start + 1);
      start = -1;
    }
  }
  return longest * hopMs;
}

/** Whether an island says "voiced"; in a stretch hardly longer than 20 ms all but one frame of it suffices. */
export function isIsland(islandMs: number, ownMs: number): boolean {
  return islandMs >= Math.min(shortestIslandMs, Math.max(hopMs, ownMs - hopMs));
}
