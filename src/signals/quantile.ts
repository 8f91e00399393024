/**
 * Quantile by linear interpolation between order statistics, position (n − 1)·share (type 7 of Hyndman & Fan 1996,
 * Am. Stat. 50:361–365). NaN values are left out; NaN when nothing is left. The input is not changed.
 */
export function quantile(values: ArrayLike<number>, share: number): number {
  const sorted = Float64Array.from(values)
    .filter((x) => !Number.isNaN(x))
    .sort();
  if (sorted.length === 0) return Number.NaN;
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below]! + (place - below) * (sorted[above]! - sorted[below]!);
}
