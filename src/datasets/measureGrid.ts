/** Grids that aligners use, in units of 0.1 ms, widest first. */
const gridsTenthMs = [200, 160, 150, 125, 100, 80, 50, 40, 25, 20, 10] as const;
const shareOnGrid = 0.99;
const shareAtFloor = 0.01;
const leastIntervals = 50;

export interface TimeGrid {
  /** Step the durations keep to, null when they keep to none. */
  readonly gridMs: number | null;
  /** Shortest duration where at least 1 % of all durations are exactly that; null when the short ones do not pile up. */
  readonly floorMs: number | null;
}

/**
 * Step and floor of durations in ms, rounded to 0.1 ms. The step is the widest of the usual ones that at least 99 % of
 * the durations are multiples of: a few odd ones, as at the end of a file, do not hide it. Fewer than 50 tell nothing.
 */
export function measureGrid(durationsMs: readonly number[]): TimeGrid {
  if (durationsMs.length < leastIntervals) return { gridMs: null, floorMs: null };
  const tenths = durationsMs.map((durationMs) => Math.round(durationMs * 10));
  const grid = gridsTenthMs.find(
    (step) => tenths.filter((value) => value % step === 0).length >= shareOnGrid * tenths.length,
  );
  if (grid === undefined) return { gridMs: null, floorMs: null };
  const counts = new Map<number, number>();
  for (const value of tenths) counts.set(value, (counts.get(value) ?? 0) + 1);
  const shortest = [...counts]
    .sort(([a], [b]) => a - b)
    .find(([, count]) => count >= 2 || count >= shareAtFloor * tenths.length);
  const piles = shortest !== undefined && shortest[0] > grid && shortest[1] >= shareAtFloor * tenths.length;
  return { gridMs: grid / 10, floorMs: piles ? shortest[0] / 10 : null };
}
