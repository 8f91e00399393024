import type { Interval } from "../alignment/interval.ts";

/** A stretch of speech between pauses. */
export interface Phrase {
  /** First interval, and one past the last. */
  readonly from: number;
  readonly to: number;
  readonly firstMora: number;
  readonly morae: number;
  /** Morae per second; null when the stretch has no duration. */
  readonly speechRateMoraePerSec: number | null;
}

/** The stretches between pauses, in order. Every interval that is no pause lies in exactly one. */
export function phrasesOf(intervals: readonly Interval[]): Phrase[] {
  const phrases: Phrase[] = [];
  for (let from = 0; from < intervals.length; from++) {
    if (intervals[from]!.kind === "pause") continue;
    let to = from;
    while (to < intervals.length && intervals[to]!.kind !== "pause") to++;
    phrases.push(phrase(intervals, from, to));
    from = to;
  }
  return phrases;
}

function phrase(intervals: readonly Interval[], from: number, to: number): Phrase {
  const firstMora = intervals[from]!.mora!;
  const last = intervals[to - 1]!;
  const morae = last.mora! + moraeCompletedBy(last) - firstMora;
  const durationSec = (last.endMs - intervals[from]!.startMs) / 1000;
  return { from, to, firstMora, morae, speechRateMoraePerSec: durationSec > 0 ? morae / durationSec : null };
}

/** A stretch cut off inside a mora counts the mora it began. */
function moraeCompletedBy(interval: Interval): number {
  return interval.length === "long" ? 2 : 1;
}
