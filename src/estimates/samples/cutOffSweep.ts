import { matchesPhone } from "../../phonology/phoneClasses.ts";
import { clusteredRate } from "../clusteredRate.ts";
import {
  type ProbabilityCells,
  probabilitySteps,
  type SweepColumn,
  sweepColumns,
} from "./probabilityCells.ts";

/** What of the cells counts: phones or classes for `phone`, `before` and `after`, names for the rest. */
export type SweepFilter = Readonly<Partial<Record<SweepColumn, string>>>;

/** The rate when vowels from this probability on are called devoiced. */
export interface SweptRate {
  readonly cutOff: number;
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  readonly devoiced: number;
}

export interface Sweep {
  readonly rates: readonly SweptRate[];
  readonly tokens: number;
  readonly speakers: number;
}

const phoneColumns: readonly SweepColumn[] = ["phone", "before", "after"];

/**
 * Devoicing rate at each cut-off between the steps of probability (0.05 to 0.95), with the interval of `clusteredRate`.
 * Null when no vowel matches.
 */
export function cutOffSweep(cells: ProbabilityCells, filter: SweepFilter, level: number): Sweep | null {
  const accepted = sweepColumns.map((column) => {
    const wanted = filter[column];
    const passes = (label: string) => {
      if (wanted === undefined) return true;
      return phoneColumns.includes(column) ? matchesPhone(label, wanted) : label === wanted;
    };
    return { codes: cells.codes[column], passes: cells.labels[column].map(passes) };
  });
  const bySpeaker = new Map<number, Float64Array>();
  for (let row = 0; row + 1 < cells.start.length; row++) {
    if (!accepted.every(({ codes, passes }) => passes[codes[row]!])) continue;
    const speaker = cells.codes.speaker[row]!;
    const counts = bySpeaker.get(speaker) ?? new Float64Array(probabilitySteps);
    bySpeaker.set(speaker, counts);
    for (let k = cells.start[row]!; k < cells.start[row + 1]!; k++)
      counts[cells.steps[k]!]! += cells.tokens[k]!;
  }
  if (bySpeaker.size === 0) return null;
  const histograms = [...bySpeaker.values()];
  const sum = (counts: Float64Array, from: number) =>
    counts.subarray(from).reduce((total, tokens) => total + tokens, 0);
  const of = histograms.map((counts) => sum(counts, 0));
  const rates = Array.from({ length: probabilitySteps - 1 }, (_, k): SweptRate => {
    const hits = histograms.map((counts) => sum(counts, k + 1));
    const { estimate, low, high } = clusteredRate(of, hits, level);
    const devoiced = hits.reduce((total, tokens) => total + tokens, 0);
    return { cutOff: (k + 1) / probabilitySteps, estimate, low, high, devoiced };
  });
  return { rates, tokens: of.reduce((total, tokens) => total + tokens, 0), speakers: of.length };
}
