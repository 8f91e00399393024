import type { Interval } from "../../statistics/interval.ts";
import type { Holds, RuleContrast } from "./ruleSchema.ts";

/** Ratios are compared on the log scale, all others as they are. */
export const scales = ["share", "difference", "ratio", "semitones", "hertz"] as const;
export type Scale = (typeof scales)[number];

const scaleOfKind: Readonly<Record<RuleContrast["kind"], Scale>> = {
  ...({ rate: "share", "rate-difference": "difference", "length-ratio": "ratio" } as const),
  ...({ "duration-ratio": "ratio", "devoiced-mora": "ratio" } as const),
  ...({ "vowel-separation": "share", "mora-count": "share" } as const),
  ...({ "length-quality": "semitones", formant: "semitones", colouring: "hertz" } as const),
};

export function scaleOf({ kind }: Pick<RuleContrast, "kind">): Scale {
  return scaleOfKind[kind];
}

/** Values that a quantity can take at all. */
export const possible: Readonly<Record<Scale, Interval>> = {
  share: { low: 0, high: 1 },
  difference: { low: -1, high: 1 },
  ratio: { low: 0, high: Number.POSITIVE_INFINITY },
  semitones: { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY },
  hertz: { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY },
};

/**
 * Values for which a rule holds, from `low` to `high` (±Infinity where open). A direction may name what is negligible:
 * then values up to `smallHigh` (rules that say "more"), or from `smallLow` on ("less"), are too small to matter.
 */
export interface Region extends Interval {
  /** Whether the edges themselves belong to it: of ranges they do, of directions not. */
  readonly closed: boolean;
  readonly smallLow: number;
  readonly smallHigh: number;
}

/** Where an interval lies: all inside, all outside, all in what is too small to matter, or across an edge. */
export type Place = "holds" | "fails" | "small" | "open";

export function regionOf(holds: Holds, scale: Scale): Region {
  const [none, all] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const widened = (value: number, by: number) => (scale === "ratio" ? value * (1 + by) : value + by);
  const narrowed = (value: number, by: number) => (scale === "ratio" ? value / (1 + by) : value - by);
  const range = (low: number, high: number, closed: boolean) => ({
    ...{ low, high, closed },
    ...{ smallLow: all, smallHigh: none },
  });
  if (holds.when === "between") return range(holds.from, holds.to, true);
  if (holds.when === "about")
    return range(narrowed(holds.value, holds.margin), widened(holds.value, holds.margin), true);
  const { value, negligible } = holds;
  const region = range(
    holds.when === "more-than" ? value : none,
    holds.when === "more-than" ? all : value,
    false,
  );
  if (negligible === undefined) return region;
  return holds.when === "more-than"
    ? { ...region, smallHigh: widened(value, negligible) }
    : { ...region, smallLow: narrowed(value, negligible) };
}

/** Decides by the whole interval: an interval that only touches the region, or reaches beyond it, decides nothing. */
export function placeOf({ low, high }: Interval, region: Region): Place {
  const beyond = (a: number, b: number) => (region.closed ? a > b : a >= b);
  if (beyond(region.low, high) || beyond(low, region.high)) return "fails";
  if (high <= region.smallHigh || low >= region.smallLow) return "small";
  const inside = (a: number, b: number) =>
    Math.abs(b) === Number.POSITIVE_INFINITY || region.closed ? a >= b : a > b;
  return inside(low, region.low) && inside(region.high, high) ? "holds" : "open";
}

/** How far inside the region the nearest point of the interval lies, negative when outside; natural log for ratios. */
export function depthOf(interval: Interval, region: Region, scale: Scale): number {
  const at = (value: number) => (scale === "ratio" ? Math.log(Math.max(0, value)) : value);
  const fromLow = region.low === Number.NEGATIVE_INFINITY ? -region.low : at(interval.low) - at(region.low);
  const fromHigh =
    region.high === Number.POSITIVE_INFINITY ? region.high : at(region.high) - at(interval.high);
  return Math.min(fromLow, fromHigh);
}
