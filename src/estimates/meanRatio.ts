import { clusterBootstrap } from "../statistics/bootstrap.ts";
import { tMultiplier } from "../statistics/distributions.ts";
import type { Interval } from "../statistics/interval.ts";
import { fiellerInterval } from "../statistics/ratioOfMeans.ts";
import { seededRandom } from "../statistics/seededRandom.ts";
import type { DurationStratum } from "./lengthGroups.ts";

/** Ratio of arithmetic means with two intervals that both allow tokens of one speaker to be alike. */
export interface MeanRatio {
  readonly estimate: number;
  readonly speakers: number;
  /** Fieller's with clustered variances and t; null when the short mean is too uncertain. */
  readonly fieller: Interval | null;
  /** By resampling speakers; null for fewer than three. */
  readonly bootstrap: Interval | null;
}

export interface MeanRatioOptions {
  readonly level: number;
  /** Default 1. The same seed gives the same interval. */
  readonly seed?: number;
  readonly resamples?: number;
}

/**
 * Long mean by short mean over the strata (speaker × phone). Where several phones are compared at once, short sounds
 * are weighted to occur as often as their long partners. Null for fewer than two speakers: use the tokens' own ratio.
 * Variances: Liang K.-Y. & Zeger S. L. (1986) Biometrika 73:13–22, with K / (K − 1); interval: Fieller E. C. (1954).
 */
export function meanRatio(strata: readonly DurationStratum[], options: MeanRatioOptions): MeanRatio | null {
  const { level, seed = 1, resamples = 1999 } = options;
  const speakers = [...new Set(strata.map((stratum) => stratum.speaker))];
  if (speakers.length < 2) return null;
  const place = new Map(speakers.map((speaker, k) => [speaker, k]));
  const sums = strata.map(({ speaker, phone, long, short }) => ({
    k: place.get(speaker)!,
    phone,
    long,
    short,
  }));
  const phones = 1 + Math.max(...strata.map((stratum) => stratum.phone));

  const means = (times: Float64Array) => weightedMeans(sums, phones, times);
  const all = means(new Float64Array(speakers.length).fill(1));
  const long = new Float64Array(speakers.length);
  const short = new Float64Array(speakers.length);
  for (const { k, phone, long: l, short: s } of sums) {
    const { longMean, shortMean, longTokens, shortTokens } = all.phones[phone]!;
    long[k]! += (l.sumMs - longMean * l.tokens) / all.longTokens;
    short[k]! += ((longTokens / all.longTokens) * (s.sumMs - shortMean * s.tokens)) / shortTokens;
  }
  const correction = speakers.length / (speakers.length - 1);
  const product = (a: Float64Array, b: Float64Array) =>
    correction * a.reduce((sum, value, k) => sum + value * b[k]!, 0);
  const { low, high } = fiellerInterval(
    {
      numerator: all.long,
      denominator: all.short,
      numeratorVariance: product(long, long),
      denominatorVariance: product(short, short),
      covariance: product(long, short),
    },
    tMultiplier(level, speakers.length - 1),
  );
  const ratio = (times: Float64Array) => {
    const drawn = means(times);
    return drawn.long / drawn.short;
  };
  return {
    estimate: all.long / all.short,
    speakers: speakers.length,
    fieller: low === null || high === null ? null : { low, high },
    bootstrap: clusterBootstrap(speakers.length, ratio, { level, resamples, random: seededRandom(seed) }),
  };
}

interface SpeakerStratum extends Pick<DurationStratum, "phone" | "long" | "short"> {
  readonly k: number;
}

/** Long mean, and short mean weighted to the long sounds' phones, when speaker k counts `times[k]` times. */
function weightedMeans(strata: readonly SpeakerStratum[], phones: number, times: Float64Array) {
  const sums = Array.from({ length: phones }, () => ({
    longTokens: 0,
    longMs: 0,
    shortTokens: 0,
    shortMs: 0,
  }));
  for (const { k, phone, long, short } of strata) {
    const sum = sums[phone]!;
    sum.longTokens += times[k]! * long.tokens;
    sum.longMs += times[k]! * long.sumMs;
    sum.shortTokens += times[k]! * short.tokens;
    sum.shortMs += times[k]! * short.sumMs;
  }
  const total = { long: 0, short: 0, longTokens: 0 };
  for (const { longTokens, longMs, shortTokens, shortMs } of sums) {
    if (longTokens === 0) continue;
    total.longTokens += longTokens;
    total.long += longMs;
    total.short += (longTokens * shortMs) / shortTokens;
  }
  return {
    long: total.long / total.longTokens,
    short: total.short / total.longTokens,
    longTokens: total.longTokens,
    phones: sums.map(({ longTokens, longMs, shortTokens, shortMs }) => ({
      longTokens,
      shortTokens,
      longMean: longMs / longTokens,
      shortMean: shortMs / shortTokens,
    })),
  };
}
