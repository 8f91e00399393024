import { type ClusteredMean, clusteredMean } from "../statistics/clusteredMean.ts";
import { tMultiplier } from "../statistics/distributions.ts";
import { exactInterval } from "../statistics/exactInterval.ts";
import { type Interval, unionOf } from "../statistics/interval.ts";
import { skewedInterval } from "../statistics/skewedInterval.ts";
import { wilsonInterval } from "../statistics/wilsonInterval.ts";
import type { RateStrength } from "./rateSafety.ts";

export interface RateEstimate extends Interval, RateStrength {
  readonly estimate: number;
  /** Stable name of the method; `rateMethod` puts it in words. */
  readonly method: RateMethod;
}

/** `one-speaker`: tokens of one person; `clustered`: several; `all-or-none`: several, none or all devoiced. */
export type RateMethod = "one-speaker" | "clustered" | "all-or-none";

/**
 * Correlation of two tokens of one speaker assumed where it cannot be estimated because no token, or every token,
 * is devoiced. Chosen by simulation (tests/bench/coverage.bench.ts): rates under 1 % whose logits differ between
 * speakers by a standard deviation of 1.5 have a correlation below it.
 */
export const assumedCorrelation = 0.1;

/**
 * Share of devoiced tokens with an interval that allows tokens of one speaker to be alike.
 * `devoiced[k]` of `marked[k]` (> 0) tokens of speaker k.
 *
 * Several speakers: mean over tokens, clustered variance (`clusteredMean`), t interval on the logit scale and brought
 * back, so that it stays inside 0 and 1; near 0 and 1 it reaches towards the middle at least as far as the one that allows
 * for the skewness of speakers' shares (`skewedInterval`: of a rare outcome, the few who show it much may have been
 * missed); never narrower than Wilson's interval for independent tokens.
 * None or all devoiced: exact interval for the effective number of tokens, n / (1 + (m − 1) × assumedCorrelation),
 * m being the token-weighted mean number of tokens a speaker (Kish L. (1965) Survey Sampling, design effect).
 * One speaker: Wilson.
 */
export function clusteredRate(
  marked: ArrayLike<number>,
  devoiced: ArrayLike<number>,
  level: number,
): RateEstimate {
  let tokens = 0;
  let hits = 0;
  for (let k = 0; k < marked.length; k++) {
    tokens += marked[k]!;
    hits += devoiced[k]!;
  }
  const estimate = hits / tokens;
  const independent = wilsonInterval(hits, tokens, level);
  const speakersShowing = fewerShowing(marked, devoiced);
  const strength = { speakersShowing, unevenness: 0 };
  if (marked.length < 2) return { estimate, ...independent, ...strength, method: "one-speaker" };
  if (hits === 0 || hits === tokens)
    return { estimate, ...allOrNone(marked, hits, tokens, level), ...strength, method: "all-or-none" };

  const spread = clusteredMean(speakerShares(marked, devoiced, estimate, marked));
  const clustered = spreadInterval(estimate, spread.variance, spread, level);
  const rarer = Math.min(estimate, 1 - estimate);
  return {
    estimate,
    ...unionOf(clustered, independent),
    speakersShowing,
    unevenness: Math.sqrt(spread.between) / rarer,
    method: "clustered",
  };
}

/** Mean of the speakers' shares, each speaker counting the same; null for fewer than two. */
export function equalWeightRate(
  marked: ArrayLike<number>,
  devoiced: ArrayLike<number>,
  level: number,
): ({ readonly estimate: number } & Interval) | null {
  const speakers = marked.length;
  if (speakers < 2) return null;
  let estimate = 0;
  for (let k = 0; k < speakers; k++) estimate += devoiced[k]! / marked[k]! / speakers;
  if (estimate <= 0 || estimate >= 1) return null;
  const spread = clusteredMean(speakerShares(marked, devoiced, estimate, new Float64Array(speakers).fill(1)));
  const variance = Math.max(spread.variance, spread.tokenVariance);
  return { estimate, ...spreadInterval(estimate, variance, spread, level) };
}

/** Share of the rarer outcome below which skewness counts in full, and above which not at all. */
const skewed = { below: 0.05, above: 0.1 };

/** On the logit scale; near 0 and 1, towards the middle at least as far as skewness asks. */
function spreadInterval(
  estimate: number,
  variance: number,
  { df, skewness }: ClusteredMean,
  level: number,
): Interval {
  const standardError = Math.sqrt(variance);
  const multiplier = tMultiplier(level, df);
  const { low, high } = logitInterval(estimate, (multiplier * standardError) / (estimate * (1 - estimate)));
  const rarer = Math.min(estimate, 1 - estimate);
  const weight = Math.min(1, (skewed.above - rarer) / (skewed.above - skewed.below));
  if (!(weight > 0)) return { low, high };
  const reach = skewedInterval(estimate, { standardError, multiplier, skewness });
  return estimate < 0.5
    ? { low, high: Math.min(1, high + weight * Math.max(0, reach.high - high)) }
    : { low: Math.max(0, low - weight * Math.max(0, low - reach.low)), high };
}

function fewerShowing(marked: ArrayLike<number>, devoiced: ArrayLike<number>): number {
  let some = 0;
  let others = 0;
  for (let k = 0; k < marked.length; k++) {
    if (devoiced[k]! > 0) some++;
    if (devoiced[k]! < marked[k]!) others++;
  }
  return Math.min(some, others);
}

function speakerShares(
  marked: ArrayLike<number>,
  devoiced: ArrayLike<number>,
  rate: number,
  weights: ArrayLike<number>,
) {
  const values = new Float64Array(marked.length);
  const within = new Float64Array(marked.length);
  for (let k = 0; k < marked.length; k++) {
    values[k] = devoiced[k]! / marked[k]!;
    within[k] = (rate * (1 - rate)) / marked[k]!;
  }
  return { values, weights, within };
}

function allOrNone(marked: ArrayLike<number>, hits: number, tokens: number, level: number): Interval {
  let squares = 0;
  for (let k = 0; k < marked.length; k++) squares += marked[k]! ** 2;
  const effective = tokens / (1 + (squares / tokens - 1) * assumedCorrelation);
  return exactInterval(hits === 0 ? 0 : effective, effective, level);
}

function logitInterval(p: number, half: number): Interval {
  const logit = Math.log(p / (1 - p));
  return { low: 1 / (1 + Math.exp(half - logit)), high: 1 / (1 + Math.exp(-half - logit)) };
}
