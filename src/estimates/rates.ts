import { type Basis, isEvidence } from "../basis.ts";
import {
  noDevoicingMarks,
  nothingSelected,
  predictedMarks,
  predictedNotRate,
} from "../messages/estimates.ts";
import type { Cells } from "./cells.ts";
import { clusteredRate, equalWeightRate } from "./clusteredRate.ts";
import type { Cut, Dim } from "./dimensions.ts";
import { type Filter, filterRestrictions } from "./filter.ts";
import { neverPooled } from "./neverPooled.ts";
import { labelOf, type Partition, partition, runsOf, sumByPart } from "./partition.ts";
import { rateMethod, rateWarnings } from "./rateSafety.ts";
import { type Selection, selectCells, selectWhere } from "./selection.ts";

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
  readonly words: null;
  readonly basis: Basis;
  readonly dataset: string;
  readonly labelSet: string;
  readonly devoiced: number;
  /** Share that the text rule marks, where the marks are predicted; else null. */
  readonly predictedShare: number | null;
  /** The same with each speaker counting the same; null for one speaker or where all or none are devoiced. */
  readonly equalWeight: { readonly estimate: number; readonly low: number; readonly high: number } | null;
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
export function devoicingRates(cells: Cells, { filter, by = [], level = 0.95 }: RateOptions = {}): Rates {
  const vowels = selectCells(cells, [
    ...filterRestrictions(filter),
    { dim: "kind", accepts: (kind) => kind === "vowel" },
  ]);
  const notes = unmarkedNotes(cells, vowels);
  const selection = selectWhere(vowels, (cell) => cells.marked[cell]! > 0);

  const { dims, shown } = neverPooled(cells, selection, "devoicedBasis", by);
  const parts = partition(cells, selection, [...dims, "speaker"]);
  const marked = sumByPart(parts, cells.marked);
  const devoiced = sumByPart(parts, cells.devoiced);
  const rows = runsOf(parts, dims.length).map(([from, to]) =>
    rateRow(cells, parts, from, shown, marked.subarray(from, to), devoiced.subarray(from, to), level),
  );
  const refused = new Set(
    rows.filter((row) => row.scope === "rule").map((row) => predictedMarks(row.dataset, row.labelSet)),
  );
  return { rows, notes: [...notes, ...refused] };
}

function rateRow(
  cells: Cells,
  parts: Partition,
  part: number,
  shown: readonly Dim[],
  marked: Float64Array,
  devoiced: Float64Array,
  level: number,
): RateRow {
  const label = (dim: Dim) => labelOf(cells, parts, part, dim);
  const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
  const basis = label("devoicedBasis") as Basis;
  const counts = { tokens: sum(marked), speakers: marked.length, words: null, devoiced: sum(devoiced) };
  const head = {
    by: Object.fromEntries(shown.map((dim) => [dim, label(dim)])),
    dataset: String(label("dataset")),
    labelSet: String(label("labelSet")),
    basis,
    level,
    ...counts,
  };
  if (!isEvidence(basis)) {
    const refused = { estimate: null, low: null, high: null, method: predictedNotRate, equalWeight: null };
    const predictedShare = counts.devoiced / counts.tokens;
    return { ...head, ...refused, predictedShare, scope: "rule", safe: false, warnings: [] };
  }
  const { estimate, low, high, method, ...strength } = clusteredRate(marked, devoiced, level);
  const warnings = rateWarnings(method, counts.speakers, strength);
  return {
    ...head,
    estimate,
    low,
    high,
    method: rateMethod(method, counts.speakers),
    predictedShare: null,
    equalWeight: equalWeightRate(marked, devoiced, level),
    scope: method === "one-speaker" ? "one speaker" : "speakers",
    safe: warnings.length === 0,
    warnings,
  };
}

/** Label sets of the selection without any mark, each with its number of vowels. */
function unmarkedNotes(cells: Cells, vowels: Selection): string[] {
  const parts = partition(cells, vowels, ["dataset", "labelSet"]);
  if (parts.count === 0) return [nothingSelected("vowel")];
  const marked = sumByPart(parts, cells.marked);
  const tokens = sumByPart(parts, cells.tokens);
  const notes: string[] = [];
  for (let part = 0; part < parts.count; part++) {
    const name = (dim: Dim) => String(labelOf(cells, parts, part, dim));
    if (marked[part] === 0) notes.push(noDevoicingMarks(name("dataset"), name("labelSet"), tokens[part]!));
  }
  return notes;
}
