import { labelMatch, leastLabelMatch } from "../measures/acoustics/labelMatch.ts";
import type { VoicingFrames } from "../measures/acoustics/voicingFrames.ts";
import { alignedSetId, type TimedSet } from "./timedSets.ts";

/** The label sets that fit a recording, and the others with how well they match. */
export interface FittingSets {
  readonly fitting: readonly TimedSet[];
  readonly others: readonly { readonly id: string; readonly match: number }[];
}

/** Tells labels that belong to another recording. Our aligner's own times were judged when they were found. */
export function fittingSets(sets: readonly TimedSet[], frames: VoicingFrames): FittingSets {
  const fitting: TimedSet[] = [];
  const others: { id: string; match: number }[] = [];
  for (const set of sets) {
    const { id } = set.labelSet;
    const match = id === alignedSetId ? null : labelMatch(frames, set.intervals);
    if (match === null || match >= leastLabelMatch) fitting.push(set);
    else others.push({ id, match });
  }
  return { fitting, others };
}
