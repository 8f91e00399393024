import { findRelease } from "./findRelease.ts";
import { isVoicelessClass, type MeasuredPhone, soundClass } from "./measuredPhone.ts";
import { hopMs, type VoicingFrames } from "./voicingFrames.ts";

/**
 * The frames in which a vowel's voicing is looked for, from C1's release or frication to C2's onset, and what in them
 * may belong to a neighbour. Frames are half-open, [from, to).
 */
export interface VowelStretch {
  readonly from: number;
  readonly to: number;
  /** The vowel's own interval as labelled or aligned. */
  readonly vowelFrom: number;
  readonly vowelTo: number;
  /** Start of a voiceless C1, closure included; null when the sound before is voiced or a pause. */
  readonly c1From: number | null;
  /** End of a voiceless C2: voice that reaches it and starts after the vowel is the next vowel's onset; null otherwise. */
  readonly c2To: number | null;
}

/** How far past its end a vowel's voice may run: edges of aligners and labels are 10–20 ms uncertain. */
const reachIntoC2Ms = 40;
const reachIntoPauseMs = 60;
/** The stretch starts this long before the release, whose place is as uncertain. */
const aheadMs = 10;

/** Voice that starts this many frames after the vowel or later is a closure's hum or the next sound. */
export const lateFrames = 3;

/** The stretch of the vowel `phones[index]`. */
export function vowelStretch(
  frames: VoicingFrames,
  phones: readonly MeasuredPhone[],
  index: number,
): VowelStretch {
  const vowel = phones[index]!;
  const before = phones[index - 1];
  const after = phones[index + 1];
  const kindBefore = before ? soundClass(before.phone) : "pause";
  const kindAfter = after ? soundClass(after.phone) : "pause";
  const frame = (ms: number) => Math.max(0, Math.min(frames.frames, Math.round(ms / hopMs)));
  let fromMs = vowel.startMs;
  let c1From: number | null = null;
  if (before && isVoicelessClass(kindBefore)) {
    c1From = frame(before.startMs);
    fromMs = before.startMs;
    if (kindBefore !== "voiceless-fricative") {
      const closed = before.closureEndMs ?? before.startMs;
      const release = findRelease(frames, closed, vowel.startMs + 10);
      fromMs = Math.max(
        before.startMs,
        Math.min((release ?? (before.startMs + vowel.startMs) / 2) - aheadMs, vowel.startMs),
      );
    }
  } else if (kindBefore === "pause") {
    fromMs = Math.max(before?.startMs ?? 0, vowel.startMs - 20);
  }
  let toMs = vowel.endMs;
  let c2To: number | null = null;
  if (after && isVoicelessClass(kindAfter)) {
    toMs += Math.min(reachIntoC2Ms, (after.endMs - after.startMs) / 2);
    c2To = frame(after.endMs);
  } else if (kindAfter === "pause") {
    toMs += after ? Math.min(reachIntoPauseMs, (after.endMs - after.startMs) / 2) : reachIntoPauseMs;
  }
  return {
    from: frame(fromMs),
    to: frame(toMs),
    vowelFrom: frame(vowel.startMs),
    vowelTo: frame(vowel.endMs),
    c1From,
    c2To,
  };
}

/**
 * The part of a stretch that is the vowel's to fill, given which frames are voiced: without the sound before C1 as it
 * fades and without the onset of the vowel after C2. Half-open; empty (from = to) when nothing is left.
 */
export function ownFrames(
  stretch: VowelStretch,
  voiced: (t: number) => boolean,
): { from: number; to: number } {
  let { from, to } = stretch;
  if (stretch.c1From !== null) while (from < stretch.vowelFrom && voiced(from)) from++;
  if (stretch.c2To !== null) {
    let onset = stretch.c2To;
    while (onset > stretch.vowelTo && voiced(onset - 1)) onset--;
    to = Math.max(stretch.vowelTo, Math.min(to, onset));
  }
  return { from: Math.min(from, to), to };
}
