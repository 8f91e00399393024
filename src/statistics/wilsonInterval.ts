import { normalMultiplier } from "./distributions.ts";
import type { Interval } from "./interval.ts";

/**
 * Score interval of a proportion: `successes` of `n` independent trials (`n` > 0, not necessarily whole).
 * Starts at exactly 0 for none and ends at exactly 1 for all.
 * Source: Wilson E. B. (1927) JASA 22:209–212; Newcombe R. G. (1998) Stat. Med. 17:857–872, method 3.
 */
export function wilsonInterval(successes: number, n: number, level = 0.95): Interval {
  const z = normalMultiplier(level);
  const p = successes / n;
  const centre = p + (z * z) / (2 * n);
  const half = z * Math.sqrt((p * (1 - p)) / n + (z * z) / (4 * n * n));
  const scale = 1 + (z * z) / n;
  return {
    low: successes <= 0 ? 0 : Math.max(0, (centre - half) / scale),
    high: successes >= n ? 1 : Math.min(1, (centre + half) / scale),
  };
}

/** The same with continuity correction: nearer to the exact interval, wider. Source: Newcombe (1998), method 4. */
export function wilsonContinuityInterval(successes: number, n: number, level = 0.95): Interval {
  const z = normalMultiplier(level);
  const p = successes / n;
  const q = 1 - p;
  const scale = 2 * (n + z * z);
  const half = (sign: number) => z * Math.sqrt(z * z + sign * 2 - 1 / n + 4 * p * (n * q - sign));
  return {
    low: successes <= 0 ? 0 : Math.max(0, (2 * n * p + z * z - 1 - half(-1)) / scale),
    high: successes >= n ? 1 : Math.min(1, (2 * n * p + z * z + 1 + half(1)) / scale),
  };
}
