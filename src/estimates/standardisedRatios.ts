import { censoredNormal } from "../statistics/censoredNormal.ts";
import { histogramQuantile } from "../statistics/histogramQuantile.ts";
import type { PhonePair, SideDurations } from "./lengthGroups.ts";

// Where several phones are compared at once, the short sounds are weighted so that each phone counts as often as it
// does among the long ones: otherwise a corpus whose long vowels are mostly /o/ would compare /o/ with /i/.

/** Ratio of arithmetic means. For one phone it is just long mean by short mean. */
export function arithmeticRatio(pairs: readonly PhonePair[]): number {
  let long = 0;
  let short = 0;
  for (const pair of pairs) {
    long += pair.long.sumMs;
    short += (pair.long.tokens * pair.short.sumMs) / pair.short.tokens;
  }
  return long / short;
}

/** Ratio of medians; null where a median stands at the aligner's floor, that is, where its true value is unknown. */
export function medianRatio(pairs: readonly PhonePair[]): number | null {
  const long = standardisedMedian(pairs, "long");
  const short = standardisedMedian(pairs, "short");
  return long === null || short === null ? null : long / short;
}

function standardisedMedian(pairs: readonly PhonePair[], side: "long" | "short"): number | null {
  const length = Math.max(...pairs.map((pair) => pair[side].histogram.length));
  const counts = new Float64Array(length);
  let atFloor = 0;
  let total = 0;
  for (const pair of pairs) {
    const { histogram, tokens, atFloor: floored } = pair[side];
    const weight = pair.long.tokens / tokens;
    for (let ms = 0; ms < histogram.length; ms++) counts[ms]! += weight * histogram[ms]!;
    atFloor += weight * floored;
    total += weight * tokens;
  }
  return medianAboveFloor(counts, atFloor, total);
}

/** Median of a histogram of which the lowest `atFloor` stand at the floor; null when the median is one of them. */
export function medianAboveFloor(counts: ArrayLike<number>, atFloor: number, total: number): number | null {
  return atFloor > 0 && atFloor >= 0.5 * total ? null : histogramQuantile(counts, 0.5);
}

/**
 * Factor by which a ratio of geometric means rises if log durations are normal and those at the floor only known to be
 * at most that long; null when nothing stands at the floor or too little stands above it.
 */
export function censoringFactor(pairs: readonly PhonePair[]): number | null {
  let sum = 0;
  let weights = 0;
  let floored = 0;
  for (const { long, short } of pairs) {
    const censored = [censoredLogMean(long), censoredLogMean(short)] as const;
    if (censored[0] === null || censored[1] === null) return null;
    const plain = long.sumLogMs / long.tokens - short.sumLogMs / short.tokens;
    const weight = (long.tokens * short.tokens) / (long.tokens + short.tokens);
    sum += weight * (censored[0] - censored[1] - plain);
    weights += weight;
    floored += long.atFloor + short.atFloor;
  }
  return floored === 0 ? null : Math.exp(sum / weights);
}

function censoredLogMean(side: SideDurations): number | null {
  if (side.atFloor === 0) return side.sumLogMs / side.tokens;
  let left = side.atFloor;
  let sum = side.sumLogMs;
  let sumSquares = side.sumSquareLogMs;
  let floorMs = 0;
  let nextMs = 0;
  for (let ms = 1; ms < side.histogram.length && nextMs === 0; ms++) {
    const count = side.histogram[ms]!;
    if (count === 0) continue;
    if (left <= 0) nextMs = ms;
    const taken = Math.min(left, count);
    sum -= taken * Math.log(ms);
    sumSquares -= taken * Math.log(ms) ** 2;
    if (taken > 0) floorMs = ms;
    left -= taken;
  }
  if (nextMs === 0) return null;
  // On the aligner's grid everything up to half a step above the floor is rounded to the floor.
  const limit = Math.log((floorMs + nextMs) / 2);
  const fit = censoredNormal({
    censored: side.atFloor,
    limit,
    observed: side.tokens - side.atFloor,
    sum,
    sumSquares,
  });
  return fit === null ? null : fit.mean;
}
