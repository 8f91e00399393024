import type { Interval } from "../alignment/interval.ts";
import type { IntervalRow } from "./columns.ts";
import type { TokenContext } from "./toTokens.ts";

/** One row an interval, pauses included, numbered as the tokens' `index` counts them. */
export function toIntervalRows(intervals: readonly Interval[], context: TokenContext): IntervalRow[] {
  const { dataset, labelSet, speaker, utterance, timeBasis, devoicingBasis } = context;
  return intervals.map((interval, index) => ({
    dataset,
    labelSet,
    speaker,
    utterance,
    index,
    phone: interval.phone,
    length: interval.length,
    lengthFrom: interval.lengthFrom,
    mora: interval.mora,
    startMs: interval.startMs,
    endMs: interval.endMs,
    timeBasis,
    confidence: interval.confidence,
    closureEndMs: interval.closureEndMs,
    devoiced: interval.devoiced,
    devoicedBasis: interval.devoiced === null ? null : devoicingBasis,
  }));
}
