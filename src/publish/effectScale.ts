import { ticks } from "d3";
import type { Region, Scale } from "../findings/rules/region.ts";
import type { RuleContrast } from "../findings/rules/ruleSchema.ts";
import { interfaceText } from "../interface/interfaceText.ts";

/** Where values stand in the picture of an effect. */
export interface EffectScale {
  /** 0 at the left edge, 1 at the right; values beyond are put at the edge. ±Infinity allowed. */
  readonly at: (value: number) => number;
  /** What the axis counts. */
  readonly unit: string;
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
}

/** Bounds of an interval or estimate; null where open or missing. */
export interface Extent {
  readonly estimate: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

/** What the axis counts where the kind of contrast says more than the scale. */
export function unitOf(kind: RuleContrast["kind"] | "needs"): string | null {
  return interfaceText().rules.units[kind] ?? null;
}

/** Ratios beyond these are drawn at the edge: one wild interval must not flatten the rest. */
const [leastRatio, mostRatio] = [0.2, 6];

/**
 * The scale that takes in what was found and the edges of the rule's region: shares from 0 to 100 %, differences with
 * 0, ratios with 1 on a log scale.
 */
export function effectScale(
  scale: Scale,
  region: Region,
  found: readonly Extent[],
  named: string | null = null,
): EffectScale {
  const unit = named ?? interfaceText().rules.units[scale]!;
  if (scale === "share")
    return { unit, ...linear(0, 1, [0, 0.25, 0.5, 0.75, 1], (value) => `${100 * value}\u00a0%`) };
  const edges = [region.low, region.high, region.smallLow, region.smallHigh];
  const values = [
    ...edges,
    ...found.flatMap(({ estimate, low, high }) => [estimate, low, high].filter((value) => value !== null)),
  ].filter(Number.isFinite);
  if (scale === "ratio") return { unit, ...ratioScale(values) };
  return { unit, ...(scale === "difference" ? differenceScale(values) : amountScale(values)) };
}

type Unnamed = Omit<EffectScale, "unit">;

function differenceScale(values: readonly number[]): Unnamed {
  const [least, most] = [Math.min(0, ...values), Math.max(0, ...values)];
  const room = Math.max(0.05, 0.12 * (most - least));
  const [from, to] = [Math.max(-1, least - room), Math.min(1, most + room)];
  const points = (value: number) => `${value > 0 ? "+" : ""}${Math.round(100 * value)}`.replace("-", "−");
  return linear(from, to, ticks(from, to, 5), points);
}

/** Semitones or Hz, with 0. */
function amountScale(values: readonly number[]): Unnamed {
  const [least, most] = [Math.min(0, ...values), Math.max(0, ...values)];
  const room = 0.12 * (most - least || 1);
  const [from, to] = [least - room, most + room];
  return linear(from, to, ticks(from, to, 5), (value) => String(Number(value.toFixed(2))).replace("-", "−"));
}

function ratioScale(values: readonly number[]): Unnamed {
  const kept = values.map((value) => Math.min(mostRatio, Math.max(leastRatio, value)));
  const [least, most] = [Math.min(1, ...kept), Math.max(1, ...kept)];
  const room = Math.max(1.08, (most / least) ** 0.12);
  const [from, to] = [Math.log(least / room), Math.log(most * room)];
  const at = (value: number) => share(Math.log(Math.max(0, value)), from, to);
  const shown: number[] = [];
  for (const value of ticks(Math.exp(from), Math.exp(to), 6))
    if (shown.every((other) => Math.abs(at(value) - at(other)) > 0.12)) shown.push(value);
  return { at, ticks: shown.map((value) => ({ value, text: `${Number(value.toFixed(2))}×` })) };
}

function linear(
  from: number,
  to: number,
  values: readonly number[],
  say: (value: number) => string,
): Unnamed {
  return {
    at: (value) => share(value, from, to),
    ticks: values.map((value) => ({ value, text: say(value) })),
  };
}

function share(value: number, from: number, to: number): number {
  return (Math.min(to, Math.max(from, value)) - from) / (to - from);
}
