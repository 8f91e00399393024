import { clusteredContrast } from "../statistics/clusteredContrast.ts";
import { tMultiplier } from "../statistics/distributions.ts";
import { type Interval, unionOf } from "../statistics/interval.ts";

/** Sounds of one row of ratios; all arrays have one entry a sound. */
export interface ComparedSounds {
  /** Codes of any kind. A word that is unknown has a code of its own. */
  readonly speaker: ArrayLike<number>;
  readonly phone: ArrayLike<number>;
  readonly word: ArrayLike<number>;
  readonly long: ArrayLike<number>;
  readonly logMs: ArrayLike<number>;
}

export interface CrossedRatio extends Interval {
  /** Which clustering made the interval as wide as it is. */
  readonly widest: "speakers" | "words" | "both";
}

/** Share of the error of independent tokens that words must see; with less, one word carries a side. */
const leastSeen = 0.4;

/**
 * The interval of a ratio of geometric means (`pairedRatio`) that allows sounds of one speaker and sounds of one word to
 * be alike: `own`, the interval by speakers, and where they are wider the ones by words and by both together (variance
 * by speakers + by words − by speaker and word; Cameron A. C., Gelbach J. B. & Miller D. L. (2011) J. Bus. Econ. Stat.
 * 29:238–249), t on the log scale. Null where so few words stand on one side that words cannot be allowed for.
 */
export function crossedRatio(
  { speaker, phone, word, long, logMs }: ComparedSounds,
  own: Interval & { readonly estimate: number },
  level: number,
): CrossedRatio | null {
  const pair = (a: ArrayLike<number>, b: ArrayLike<number>) => {
    const codes = new Map<string, number>();
    return Array.from(a, (code, i) => {
      const key = `${code} ${b[i]}`;
      const found = codes.get(key) ?? codes.size;
      codes.set(key, found);
      return found;
    });
  };
  const contrast = { stratum: pair(speaker, phone), side: long, value: logMs };
  const words = clusteredContrast({ ...contrast, cluster: word });
  if (words === null || words.seen < leastSeen || !(words.df > 0)) return null;
  const interval = (variance: number, df: number): Interval => {
    const half = Math.exp(tMultiplier(level, df) * Math.sqrt(variance));
    return { low: own.estimate / half, high: own.estimate * half };
  };
  const byWords = interval(words.variance, words.df);
  const speakers = clusteredContrast({ ...contrast, cluster: speaker });
  const single = clusteredContrast({ ...contrast, cluster: pair(speaker, word) });
  const variance =
    speakers === null || single === null ? 0 : speakers.variance + words.variance - single.variance;
  const byBoth =
    speakers !== null && variance > 0 ? interval(variance, Math.min(speakers.df, words.df)) : null;
  const width = (one: Interval | null) => (one === null ? 0 : one.high / one.low);
  const all = byBoth === null ? byWords : unionOf(byWords, byBoth);
  return {
    ...unionOf({ low: own.low, high: own.high }, all),
    widest:
      width(byBoth) > Math.max(width(own), width(byWords))
        ? "both"
        : width(byWords) > width(own)
          ? "words"
          : "speakers",
  };
}
