import type { Dim } from "../../estimates/dimensions.ts";
import type { Interval } from "../../statistics/interval.ts";
import type { RuleEvidence } from "./evidence.ts";
import { readContrast } from "./readContrast.ts";
import { corpusKey, type Reading, type ReadOptions } from "./reading.ts";
import { depthOf, placeOf, type Region, type Scale } from "./region.ts";
import type { JudgedRule } from "./ruleSchema.ts";
import type { JudgedPart, JudgedParts } from "./verdict.ts";

/** Readings of the parts of every corpus by some columns, at a level adjusted for their number. */
export interface PartReadings {
  readonly level: number;
  readonly readings: readonly Reading[];
}

/**
 * Reads every environment (or speaker) of the rule's columns. All of a corpus that have enough tokens are one family:
 * each gets a confidence level of 1 − (1 − level) / number (Bonferroni), so that all their intervals together hold.
 */
export function readParts(
  rule: JudgedRule,
  evidence: RuleEvidence,
  columns: readonly Dim[],
  leastSpeakers: number,
  options: ReadOptions,
): PartReadings {
  const { level } = options;
  const read = (at: number) =>
    columns.flatMap((column) => readContrast(evidence, rule.contrast, column, { ...options, level: at }));
  const counts = new Map<string, number>();
  for (const reading of read(level))
    if (isEnough(reading, rule.least.tokens, leastSpeakers))
      counts.set(basisKey(reading), (counts.get(basisKey(reading)) ?? 0) + 1);
  const family = Math.max(1, ...counts.values());
  const strict = 1 - (1 - level) / family;
  return { level: strict, readings: family > 1 ? read(strict) : read(level) };
}

export function isEnough(reading: Reading, tokens: number, speakers: number): boolean {
  return reading.judged !== null && Math.min(...reading.tokens) >= tokens && reading.speakers >= speakers;
}

export function basisKey(reading: Reading): string {
  return `${corpusKey(reading)}\u0000${reading.basis}`;
}

/** A part whose place is known, with the interval that decided it. */
export interface Part extends JudgedPart {
  readonly judged: Interval;
}

export function judgeParts(
  readings: readonly Reading[],
  region: Region,
  tokens: number,
  speakers: number,
): Part[] {
  return readings
    .filter((reading) => isEnough(reading, tokens, speakers))
    .map((reading) => ({
      ...reading.part!,
      place: placeOf(reading.judged!, region),
      estimate: reading.estimate!,
      ...finite(reading.judged!),
      ...{ tokens: reading.tokens, speakers: reading.speakers, judged: reading.judged! },
    }));
}

/** Bounds for results: null where open. */
export function finite({ low, high }: Interval): { low: number | null; high: number | null } {
  return { low: Number.isFinite(low) ? low : null, high: Number.isFinite(high) ? high : null };
}

export function summarise(parts: readonly Part[], level: number): JudgedParts {
  const shown = ({ judged: _, ...part }: Part): JudgedPart => part;
  return {
    level,
    judged: parts.length,
    holding: parts.filter(({ place }) => place === "holds").map(shown),
    failing: parts.filter(isContrary).map(shown),
  };
}

export function isContrary({ place }: JudgedPart): boolean {
  return place === "fails" || place === "small";
}

/** Largest share of a column's tokens that lies in parts of the wanted place; tokens of unjudged parts count as others. */
export function shareOf(
  parts: readonly Part[],
  readings: readonly Reading[],
  wanted: (part: Part) => boolean,
): number {
  const totals = new Map<Dim, number>();
  for (const { part, tokens } of readings)
    totals.set(part!.column, (totals.get(part!.column) ?? 0) + sum(tokens));
  const found = new Map<Dim, number>();
  for (const part of parts)
    if (wanted(part)) found.set(part.column, (found.get(part.column) ?? 0) + sum(part.tokens));
  return Math.max(0, ...[...found].map(([column, tokens]) => tokens / totals.get(column)!));
}

/** Up to three parts that hold with most to spare, and three that fail by most. */
export function extremes(parts: readonly Part[], region: Region, scale: Scale) {
  const shown = ({ judged: _, ...part }: Part): JudgedPart => part;
  const inside = ({ judged }: Part) => depthOf(judged, region, scale);
  const outside = ({ judged: { low, high } }: Part) =>
    Math.max(depthOf({ low, high: low }, region, scale), depthOf({ low: high, high }, region, scale));
  const first = (place: (part: Part) => boolean, order: (a: Part, b: Part) => number) =>
    parts.filter(place).sort(order).slice(0, 3).map(shown);
  return {
    clearest: first(
      ({ place }) => place === "holds",
      (a, b) => inside(b) - inside(a),
    ),
    mostContrary: first(isContrary, (a, b) => outside(a) - outside(b)),
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
