/** Two bounds of an interval, in the unit of the estimate; ±Infinity where it is open. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The narrowest interval that holds both. */
export function unionOf(a: Interval, b: Interval): Interval {
  return { low: Math.min(a.low, b.low), high: Math.max(a.high, b.high) };
}
