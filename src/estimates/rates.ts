import { type Basis, isEvidence } from "../basis.ts";
import { fewVowels, predictedMarks, predictedNotRate } from "../messages/estimates.ts";
import type { Cells } from "./cells.ts";
import { clusteredRate, equalWeightRate } from "./clusteredRate.ts";
import { type CorrectedRate, correctedRate, type DecisionAccuracy } from "./correctedRate.ts";
import type { Cut, Dim } from "./dimensions.ts";
import type { Filter } from "./filter.ts";
import { type RateGroup, rateGroups } from "./rateGroups.ts";
import { edgeNotice, enoughVowels, rateMethod, rateWarnings } from "./rateSafety.ts";
import type { CrossedInterval } from "./words.ts";

export interface RateRow {
  readonly by: Cut;
  /** Share of vowels devoiced, 0 to 1; null where the marks are no evidence. */
  readonly estimate: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly level: number;
  readonly method: string;
  /** Vowels with a devoicing mark. */
  readonly tokens: number;
  readonly speakers: number;
  /** Words that the vowels stand in; null where only cells are at hand, which hold no words. */
  readonly words: number | null;
  /** The interval where words count as belonging together too; null likewise. */
  readonly crossed: CrossedInterval | null;
  readonly basis: Basis;
  readonly dataset: string;
  readonly labelSet: string;
  readonly devoiced: number;
  /** Share that the text rule marks, where the marks are predicted; else null. */
  readonly predictedShare: number | null;
  /** The same with each speaker counting the same; null for one speaker or where all or none are devoiced. */
  readonly equalWeight: { readonly estimate: number; readonly low: number; readonly high: number } | null;
  /** Corrected for the errors of the devoicing decision, where its accuracy is known; else null. */
  readonly corrected: CorrectedRate | null;
  /** Whom the interval speaks of. */
  readonly scope: "speakers" | "one speaker" | "rule";
  /** True when simulations found the interval to keep its level in cases like this one. */
  readonly safe: boolean;
  readonly warnings: readonly string[];
}

export interface RateOptions {
  readonly filter?: Filter;
  readonly by?: readonly Dim[];
  /** Default 0.95. */
  readonly level?: number;
  /** How reliable measured devoicing is; with it, rows of basis `measured` carry a corrected rate. */
  readonly accuracy?: DecisionAccuracy;
}

export interface Rates {
  readonly rows: RateRow[];
  /** What the reader must know beyond the rows, in whole sentences. */
  readonly notes: string[];
}

/**
 * Devoicing rates of the vowels that match, one row a combination of the `by` columns, in the order of their labels.
 * Datasets, label sets and bases are never pooled: where the selection holds several they are added to `by`.
 */
export function devoicingRates(cells: Cells, options: RateOptions = {}): Rates {
  const { filter, by = [], level = 0.95, accuracy } = options;
  const { groups, notes } = rateGroups(cells, filter, by);
  const rows = groups.map((group) =>
    isEvidence(group.basis) ? rateRow(group, level, accuracy) : refusedRow(group, level),
  );
  const refused = new Set(
    rows.filter((row) => row.scope === "rule").map((row) => predictedMarks(row.dataset, row.labelSet)),
  );
  return { rows, notes: [...notes, ...refused] };
}

function rateRow(group: RateGroup, level: number, accuracy: DecisionAccuracy | undefined): RateRow {
  const { marked, devoiced, basis } = group;
  const head = headOf(group, level);
  const rate = clusteredRate(marked, devoiced, level);
  const { estimate, low, high, method } = rate;
  const doubts = rateWarnings(method, head.speakers, rate);
  const few = head.tokens < enoughVowels ? [fewVowels(enoughVowels)] : [];
  const warnings = [...doubts, ...few, ...edgeNotice(method, estimate, doubts)];
  return {
    ...head,
    ...{ estimate, low, high },
    method: rateMethod(method, head.speakers),
    predictedShare: null,
    equalWeight: equalWeightRate(marked, devoiced, level),
    corrected: accuracy && basis === "measured" ? correctedRate(rate, accuracy, level) : null,
    scope: method === "one-speaker" ? "one speaker" : "speakers",
    safe: warnings.length === 0,
    warnings,
  };
}

/** Marks that are no evidence: how many there are, and no rate. */
function refusedRow(group: RateGroup, level: number): RateRow {
  const head = headOf(group, level);
  const none = { estimate: null, low: null, high: null, equalWeight: null, corrected: null };
  const predictedShare = head.devoiced / head.tokens;
  return {
    ...head,
    ...none,
    method: predictedNotRate,
    predictedShare,
    scope: "rule",
    safe: false,
    warnings: [],
  };
}

function headOf({ by, dataset, labelSet, basis, marked, devoiced }: RateGroup, level: number) {
  const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
  const counts = { tokens: sum(marked), speakers: marked.length, words: null, crossed: null };
  return { by, dataset, labelSet, basis, level, ...counts, devoiced: sum(devoiced) };
}
