import type { Interval } from "./interval.ts";

/**
 * t interval of a mean whose estimate is skewed, by Hall's transformation (Hall P. (1992) J. R. Stat. Soc. B 54:221–228):
 * it reaches further to the side on which rare large values may have been missed. `skewness` is that of the estimate;
 * 0 gives the plain t interval.
 */
export function skewedInterval(
  estimate: number,
  { standardError, skewness, multiplier }: { standardError: number; skewness: number; multiplier: number },
): Interval {
  const back = (x: number) =>
    Math.abs(skewness) < 1e-9 ? x : (3 / skewness) * (Math.cbrt(1 + skewness * (x - skewness / 6)) - 1);
  return {
    low: estimate - standardError * back(multiplier),
    high: estimate - standardError * back(-multiplier),
  };
}
