import type { Interval } from "./interval.ts";
import { wilsonInterval } from "./wilsonInterval.ts";

/** `successes` of `n` trials. */
export interface Count {
  readonly successes: number;
  readonly n: number;
}

/**
 * Interval of the difference a − b of two independent proportions, from their Wilson intervals.
 * Source: Newcombe R. G. (1998) Stat. Med. 17:873–890, method 10 (hybrid score).
 */
export function proportionDifference(a: Count, b: Count, level = 0.95): Interval {
  const [pa, pb] = [a.successes / a.n, b.successes / b.n];
  const [ia, ib] = [wilsonInterval(a.successes, a.n, level), wilsonInterval(b.successes, b.n, level)];
  const difference = pa - pb;
  return {
    low: difference - Math.hypot(pa - ia.low, ib.high - pb),
    high: difference + Math.hypot(ia.high - pa, pb - ib.low),
  };
}
