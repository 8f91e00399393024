import { clusteredMean } from "../statistics/clusteredMean.ts";
import { tMultiplier } from "../statistics/distributions.ts";
import { type Interval, unionOf } from "../statistics/interval.ts";
import { varianceFromSums } from "../statistics/summary.ts";

/** Log durations of one side of a stratum. */
export interface LogSums {
  readonly tokens: number;
  readonly sumLogMs: number;
  readonly sumSquareLogMs: number;
}

/** Long and short sounds of one speaker and phone; both sides hold at least one token. */
export interface Stratum {
  readonly speaker: number;
  readonly phone: number;
  readonly long: LogSums;
  readonly short: LogSums;
}

export interface PairedRatio extends Interval {
  readonly estimate: number;
  readonly speakers: number;
  readonly method: "one-speaker" | "clustered";
  /** The same with each speaker counting the same; null for one speaker. */
  readonly equalWeight: ({ readonly estimate: number } & Interval) | null;
}

type Side = "long" | "short";

/** Pooled variance of log duration and its degrees of freedom, by phone and side. */
type Spreads = ReadonlyMap<string, { readonly variance: number; readonly df: number }>;

/**
 * Ratio of geometric means of long and short sounds, compared only within a speaker and a phone: differences of mean
 * log durations, weighted by n·m / (n + m) of the stratum (least squares with an intercept for each stratum).
 *
 * Several speakers: one difference a speaker, clustered variance (`clusteredMean`), t interval on the log scale; never
 * narrower than the one for independent tokens. One speaker: that one (Welch B. L. (1947) Biometrika 34:28–35).
 * Null when no stratum has spread enough to say how certain the ratio is.
 */
export function pairedRatio(strata: readonly Stratum[], level: number): PairedRatio | null {
  const differences = speakerDifferences(strata);
  if (differences === null) return null;
  const { speakers, values, weights, within, all } = differences;
  const independent = expInterval(all.value, tMultiplier(level, all.df) * Math.sqrt(all.variance));
  const estimate = Math.exp(all.value);
  if (speakers.length < 2)
    return { estimate, ...independent, speakers: 1, method: "one-speaker", equalWeight: null };

  const spread = clusteredMean({ values, weights, within });
  const half = tMultiplier(level, spread.df) * Math.sqrt(spread.variance);
  const even = clusteredMean({ values, weights: values.map(() => 1), within });
  const evenHalf = tMultiplier(level, even.df) * Math.sqrt(Math.max(even.variance, even.tokenVariance));
  return {
    estimate,
    ...unionOf(expInterval(spread.estimate, half), independent),
    speakers: speakers.length,
    method: "clustered",
    equalWeight: { estimate: Math.exp(even.estimate), ...expInterval(even.estimate, evenHalf) },
  };
}

/** Mean log difference of each speaker with its weight and token variance, and of all strata together. */
export interface SpeakerDifferences {
  readonly speakers: readonly number[];
  readonly values: readonly number[];
  readonly weights: readonly number[];
  readonly within: readonly number[];
  readonly all: { readonly value: number; readonly variance: number; readonly df: number };
}

/** Null when no stratum has spread enough. */
export function speakerDifferences(strata: readonly Stratum[]): SpeakerDifferences | null {
  const spreads = pooledSpreads(strata);
  if (spreads === null) return null;
  const bySpeaker = new Map<number, Stratum[]>();
  for (const stratum of strata)
    bySpeaker.set(stratum.speaker, [...(bySpeaker.get(stratum.speaker) ?? []), stratum]);
  const perSpeaker = [...bySpeaker.values()].map((own) => combine(own, spreads));
  return {
    speakers: [...bySpeaker.keys()],
    values: perSpeaker.map((one) => one.value),
    weights: perSpeaker.map((one) => one.weight),
    within: perSpeaker.map((one) => one.variance),
    all: combine(strata, spreads),
  };
}

/** Weighted mean of the strata's differences, its variance for independent tokens and Satterthwaite's df. */
function combine(strata: readonly Stratum[], spreads: Spreads) {
  let weight = 0;
  let sum = 0;
  const parts = new Map<string, number>();
  for (const { phone, long, short } of strata) {
    const w = (long.tokens * short.tokens) / (long.tokens + short.tokens);
    weight += w;
    sum += w * (long.sumLogMs / long.tokens - short.sumLogMs / short.tokens);
    for (const [side, { tokens }] of [["long", long] as const, ["short", short] as const]) {
      const key = spreadKey(phone, side);
      parts.set(key, (parts.get(key) ?? 0) + (w * w * spreads.get(key)!.variance) / tokens);
    }
  }
  let variance = 0;
  let squares = 0;
  for (const [key, part] of parts) {
    variance += part;
    squares += part ** 2 / spreads.get(key)!.df;
  }
  const df = squares > 0 ? variance ** 2 / squares : Number.POSITIVE_INFINITY;
  return { weight, value: sum / weight, variance: variance / weight ** 2, df };
}

/** Null when nothing varies. A phone and side with one token a stratum takes the spread of all. */
function pooledSpreads(strata: readonly Stratum[]): Spreads | null {
  const pools = new Map<string, { squares: number; df: number }>();
  const total = { squares: 0, df: 0 };
  for (const stratum of strata) {
    for (const side of ["long", "short"] as const) {
      const { tokens, sumLogMs, sumSquareLogMs } = stratum[side];
      const key = spreadKey(stratum.phone, side);
      const pool = pools.get(key) ?? { squares: 0, df: 0 };
      pools.set(key, pool);
      if (tokens < 2) continue;
      const squares = varianceFromSums(tokens, sumLogMs, sumSquareLogMs) * (tokens - 1);
      for (const into of [pool, total]) {
        into.squares += squares;
        into.df += tokens - 1;
      }
    }
  }
  if (!(total.squares > 1e-12 * total.df)) return null;
  return new Map(
    [...pools].map(([key, pool]) => {
      const { squares, df } = pool.df > 0 && pool.squares > 0 ? pool : total;
      return [key, { variance: squares / df, df }];
    }),
  );
}

function spreadKey(phone: number, side: Side): string {
  return `${phone}${side}`;
}

function expInterval(log: number, half: number): Interval {
  return { low: Math.exp(log - half), high: Math.exp(log + half) };
}
