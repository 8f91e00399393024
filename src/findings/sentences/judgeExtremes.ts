import type { RateRow } from "../../estimates/rates.ts";
import { interfaceText } from "../../interface/interfaceText.ts";
import { formatDecimals, intervalName } from "../format.ts";

/** The difference of two rows with its interval of this level; null where it cannot be told. */
export type DifferenceOf = (
  a: RateRow,
  b: RateRow,
  level: number,
) => { readonly difference: number; readonly low: number; readonly high: number } | null;

/**
 * Whether the highest of `ranked` rates surely lies above the lowest, and their difference in words. The interval of the
 * difference is so wide that it holds for whichever pair is looked at (Bonferroni); the order is sure where the interval
 * lies above 0 as it is printed, so that the numbers never gainsay the verdict. Null where the difference is not known.
 */
export function judgeExtremes(
  top: RateRow,
  bottom: RateRow,
  ranked: number,
  differenceOf: DifferenceOf,
): { readonly sure: boolean; readonly difference: string } | null {
  const pairs = (ranked * (ranked - 1)) / 2;
  const found = differenceOf(top, bottom, 1 - (1 - top.level) / pairs);
  if (found === null) return null;
  const bounds = [found.low, found.high].map((share) => 100 * share);
  const digits = bounds.some((bound) => bound !== 0 && Math.round(bound) === 0) ? 1 : 0;
  const [low, high] = bounds.map((bound) => printed(bound, digits)) as [string, string];
  const interval = `${intervalName(top.level)} ${interfaceText().format.range(low, high)}`;
  return {
    sure: Number((100 * found.low).toFixed(digits)) > 0,
    difference: interfaceText().sentences.rates.difference(
      printed(100 * found.difference, digits),
      interval,
      pairs,
    ),
  };
}

/** 0 has no decimals. */
function printed(points: number, digits: number): string {
  const text = formatDecimals(points, digits);
  return Number(text) === 0 ? "0" : text;
}
