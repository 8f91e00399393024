import { tMultiplier, tTwoSidedP } from "../statistics/distributions.ts";
import { type Interval, unionOf } from "../statistics/interval.ts";
import { proportionDifference } from "../statistics/proportionDifference.ts";

/** Vowels of one cut by speaker; the two cuts of a difference list the same speakers, with 0 where one has none. */
export interface SpeakerCounts {
  readonly marked: ArrayLike<number>;
  readonly devoiced: ArrayLike<number>;
}

export interface RateDifference extends Interval {
  /** First rate minus second, −1 to 1. */
  readonly difference: number;
  /** Two-sided p-value of no difference. */
  readonly p: number;
  readonly method: DifferenceMethod;
}

/** `lone-speaker`: one speaker makes up a cut and others are in the other one, so that nothing tells how speakers differ. */
export type DifferenceMethod = "one-speaker" | "clustered" | "lone-speaker";

/**
 * Difference of the devoicing rates of two cuts that the same speakers may contribute to: what a speaker adds to one
 * is set against what the same speaker adds to the other. Clustered variance with leverage correction and t; degrees
 * of freedom by the effective number of speakers, of both cuts together and, where one rests on fewer, of each by its
 * part in the variance. Never narrower than Newcombe's interval for independent tokens, which is also the one for one
 * speaker. Where one of several speakers alone makes up a cut the interval is open, −1 to 1. Null when a cut is empty.
 */
export function rateDifference(a: SpeakerCounts, b: SpeakerCounts, level: number): RateDifference | null {
  const [ta, tb] = [total(a), total(b)];
  if (ta.n === 0 || tb.n === 0) return null;
  const [pa, pb] = [ta.successes / ta.n, tb.successes / tb.n];
  const difference = pa - pb;
  const independent = proportionDifference(ta, tb, level);
  const pooled = (ta.successes + tb.successes) / (ta.n + tb.n);
  const independentError = Math.sqrt(pooled * (1 - pooled) * (1 / ta.n + 1 / tb.n));

  let squares = 0;
  let concentration = 0;
  let ofEach = { a: 0, b: 0 };
  let speakers = 0;
  for (let k = 0; k < a.marked.length; k++) {
    const [na, nb] = [a.marked[k]!, b.marked[k]!];
    if (na + nb === 0) continue;
    speakers++;
    const [ha, hb] = [na / ta.n, nb / tb.n];
    const ofA = ha < 1 ? (a.devoiced[k]! - pa * na) / ta.n / Math.sqrt(1 - ha) : 0;
    const ofB = hb < 1 ? (b.devoiced[k]! - pb * nb) / tb.n / Math.sqrt(1 - hb) : 0;
    squares += (ofA - ofB) ** 2;
    concentration += ((ha + hb) / 2) ** 2;
    ofEach = { a: ofEach.a + ha * ha, b: ofEach.b + hb * hb };
  }
  if (speakers < 2) {
    const p = pValue(difference, independentError, 1e9);
    return { difference, ...independent, p, method: "one-speaker" };
  }
  const df = Math.min(1 / concentration - 1, satterthwaite(ofEach.a, ofEach.b));
  if (!(df > leastDf)) return { difference, low: -1, high: 1, p: 1, method: "lone-speaker" };
  const error = Math.sqrt(squares);
  const half = tMultiplier(level, df) * error;
  const clustered = { low: Math.max(-1, difference - half), high: Math.min(1, difference + half) };
  const p = Math.max(pValue(difference, error, df), pValue(difference, independentError, 1e9));
  return { difference, ...unionOf(clustered, independent), p, method: "clustered" };
}

/** Fewer degrees of freedom come from a cut that all but one speaker's tokens are missing from. */
const leastDf = 0.2;

/** Degrees of freedom of a sum of two variances with these sums of squared shares; 0 where one speaker makes up a cut. */
function satterthwaite(a: number, b: number): number {
  if (a >= 1 || b >= 1) return 0;
  return (a + b) ** 2 / (a ** 2 / (1 / a - 1) + b ** 2 / (1 / b - 1));
}

function pValue(difference: number, error: number, df: number): number {
  if (error > 0) return tTwoSidedP(difference / error, df);
  return difference === 0 ? 1 : 0;
}

function total({ marked, devoiced }: SpeakerCounts): { n: number; successes: number } {
  let n = 0;
  let successes = 0;
  for (let k = 0; k < marked.length; k++) {
    n += marked[k]!;
    successes += devoiced[k]!;
  }
  return { n, successes };
}
