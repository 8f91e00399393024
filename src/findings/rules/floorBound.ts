import { noticeableFloor } from "../../estimates/ratioCore.ts";
import { floorOpens } from "../../messages/rules.ts";
import type { Interval } from "../../statistics/interval.ts";

/** A sound at an aligner's floor is taken to have lasted at least this part of the floor: 10 ms of 30 ms. */
const leastOfFloor = 1 / 3;

export interface FloorBound {
  readonly judged: Interval;
  /** Set where the estimate itself is a bound: when no tokens at the floor could move it the other way. */
  readonly bound: "at least" | "at most" | null;
  readonly warnings: readonly string[];
}

/**
 * What an interval of a ratio of geometric means, first by second, may say when some tokens stand at an aligner's
 * floor (shares 0 to 1). Sounds at the floor may have been shorter: those of the second cut push the true ratio up,
 * those of the first down. Towards the side with more of them the interval is open, so that it can never decide about
 * a limit there; on the other side it is widened as if all of them had lasted a third of the floor.
 */
export function boundByFloorShares(interval: Interval, first: number, second: number): FloorBound {
  const low = interval.low * leastOfFloor ** first;
  const high = interval.high * leastOfFloor ** -second;
  const noticeable = (share: number) => share >= noticeableFloor;
  if (!noticeable(first) && !noticeable(second)) return { judged: { low, high }, bound: null, warnings: [] };
  if (second >= first)
    return {
      judged: { low, high: Number.POSITIVE_INFINITY },
      bound: noticeable(first) ? null : "at least",
      warnings: [floorOpens("lower")],
    };
  return {
    judged: { low: 0, high },
    bound: noticeable(second) ? null : "at most",
    warnings: [floorOpens("upper")],
  };
}
