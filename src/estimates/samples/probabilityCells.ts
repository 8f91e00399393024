import { isVoiceless } from "../../phonology/phones.ts";
import { labelAt, type TokenTable } from "../tokenTable.ts";

/** Steps that the probability of devoicing is counted in: 0 to 0.05, …, 0.95 to 1. */
export const probabilitySteps = 20;

/** What vowels are told apart by in a sweep over the cut-off. */
export const sweepColumns = ["speaker", "phone", "before", "after", "position"] as const;
export type SweepColumn = (typeof sweepColumns)[number];

/**
 * How many vowels of one dataset and label set have which stated probability of being devoiced, by speaker and
 * environment: row r has `codes[column][r]` as its labels and the counts `[start[r], start[r + 1])` of `steps`, `tokens`.
 * Short vowels (or of unknown length) after a voiceless consonant, where devoicing may happen.
 */
export interface ProbabilityCells {
  readonly labels: Readonly<Record<SweepColumn, readonly string[]>>;
  readonly codes: Readonly<Record<SweepColumn, readonly number[]>>;
  readonly start: readonly number[];
  readonly steps: readonly number[];
  readonly tokens: readonly number[];
}

/** Empty where no vowel has a stated probability, as without recordings. */
export function probabilityCells({ labels, numbers }: TokenTable, rows: Uint32Array): ProbabilityCells {
  const found = new Map<string, { names: readonly string[]; counts: Map<number, number> }>();
  for (const row of rows) {
    const probability = numbers.devoicedProbability[row]!;
    if (labelAt(labels.kind, row) !== "vowel" || Number.isNaN(probability)) continue;
    if (labelAt(labels.length, row) === "long" || !isVoiceless(labelAt(labels.before, row) ?? "")) continue;
    const names = sweepColumns.map((column) => labelAt(labels[column], row) ?? "unknown");
    const key = names.join("\u0000");
    const cell = found.get(key) ?? { names, counts: new Map<number, number>() };
    found.set(key, cell);
    const step = Math.max(0, Math.min(probabilitySteps - 1, Math.floor(probabilitySteps * probability)));
    cell.counts.set(step, (cell.counts.get(step) ?? 0) + 1);
  }
  const cells = [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, cell]) => cell);
  const known = sweepColumns.map((_, k) => [...new Set(cells.map(({ names }) => names[k]!))].sort());
  const histogram = cells.map(({ counts }) => [...counts].sort(([a], [b]) => a - b));
  const start = [0];
  for (const entries of histogram) start.push(start.at(-1)! + entries.length);
  const byColumn = <T>(of: (k: number) => T) =>
    Object.fromEntries(sweepColumns.map((column, k) => [column, of(k)])) as Record<SweepColumn, T>;
  return {
    labels: byColumn((k) => known[k]!),
    codes: byColumn((k) => cells.map(({ names }) => known[k]!.indexOf(names[k]!))),
    start,
    steps: histogram.flatMap((entries) => entries.map(([step]) => step)),
    tokens: histogram.flatMap((entries) => entries.map(([, tokens]) => tokens)),
  };
}
