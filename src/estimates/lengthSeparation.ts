import type { Basis } from "../basis.ts";
import { clusteredMean } from "../statistics/clusteredMean.ts";
import { normalMultiplier, tMultiplier } from "../statistics/distributions.ts";
import { exactInterval } from "../statistics/exactInterval.ts";
import { areaUnderCurve, areaVariance, type BestCut, bestCut } from "../statistics/separation.ts";
import type { Cells } from "./cells.ts";
import type { Cut, Dim } from "./dimensions.ts";
import { type Filter, filterRestrictions } from "./filter.ts";
import { type Contrast, type Surroundings, selectContrast, sides } from "./lengthContrast.ts";
import { neverPooled } from "./neverPooled.ts";
import { partHistograms } from "./partHistograms.ts";
import { labelOf, type Partition, partition, runsOf } from "./partition.ts";

/** How well duration alone tells long from short, for one sound. */
export interface SeparationRow {
  readonly by: Cut;
  readonly dataset: string;
  readonly labelSet: string;
  readonly basis: Basis;
  readonly level: number;
  /** Chance that a long token is longer than a short one of the same speaker: mean over speakers. 0.5 is chance. */
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  /** The same over all tokens, whoever spoke them. */
  readonly pooled: number;
  /** Best cut over all tokens; `cut` in ms. */
  readonly best: BestCut;
  readonly tokens: number;
  readonly speakers: number;
  readonly words: null;
}

export interface SeparationOptions {
  readonly contrast: Contrast;
  readonly filter?: Filter;
  readonly by?: readonly Dim[];
  readonly level?: number;
  readonly surroundings?: Surroundings;
}

/**
 * Area under the curve and best cut from the cells' histograms, always cut by phone: a mixture of sounds would be told
 * apart by the sound. Interval: t over the speakers' areas; one speaker: DeLong E. R., DeLong D. M. & Clarke-Pearson
 * D. L. (1988) Biometrics 44:837–845. Tokens at the aligner's floor do no harm here as long as the others are longer:
 * only the order counts. For durations relative to speech rate, give it cells of normalised durations.
 */
export function lengthSeparation(cells: Cells, options: SeparationOptions): SeparationRow[] {
  const { contrast, filter, by = [], level = 0.95, surroundings = "consonants" } = options;
  const selection = selectContrast(cells, filterRestrictions(filter), contrast, surroundings);
  if (selection.length === 0) return [];
  const { dims, shown } = neverPooled(
    cells,
    selection,
    "timeBasis",
    by.includes("phone") ? by : [...by, "phone"],
  );
  const finer: Dim[] = dims.includes("speaker") ? [...dims, "length"] : [...dims, "speaker", "length"];
  const parts = partition(cells, selection, finer);
  const { of } = partHistograms(cells, parts, null);
  return runsOf(parts, dims.length).flatMap(([from, to]) => {
    const speakers = runsOf(parts, finer.length - 1, from, to).flatMap((run) => {
      const pair = pairOf(cells, parts, run, sides[contrast].long, of);
      return pair === null ? [] : [pair];
    });
    const row = rowOf(speakers, level);
    if (row === null) return [];
    const label = (dim: Dim) => labelOf(cells, parts, from, dim);
    return [
      {
        by: Object.fromEntries(shown.map((dim) => [dim, label(dim)])),
        dataset: String(label("dataset")),
        labelSet: String(label("labelSet")),
        basis: label("timeBasis") as Basis,
        level,
        ...row,
        words: null,
      },
    ];
  });
}

interface Histograms {
  readonly long: Float64Array;
  readonly short: Float64Array;
}

function pairOf(
  cells: Cells,
  parts: Partition,
  [from, to]: readonly [number, number],
  longLabel: string,
  of: (part: number) => Float64Array,
): Histograms | null {
  let [long, short]: [Float64Array | null, Float64Array | null] = [null, null];
  for (let part = from; part < to; part++) {
    if (labelOf(cells, parts, part, "length") === longLabel) long = of(part);
    else short = of(part);
  }
  return long === null || short === null ? null : { long, short };
}

function rowOf(speakers: readonly Histograms[], level: number) {
  if (speakers.length === 0) return null;
  const long = addUp(speakers.map((pair) => pair.long));
  const short = addUp(speakers.map((pair) => pair.short));
  const best = bestCut(long, short);
  if (best === null) return null;
  const values = speakers.map((pair) => areaUnderCurve(pair.long, pair.short));
  const fewer = speakers.map((pair) => Math.min(total(pair.long), total(pair.short)));
  const within = speakers.map((pair, k) => {
    const variance = areaVariance(pair.long, pair.short);
    // With a single token on one side only the bound A(1 − A) / n is known.
    return Number.isFinite(variance) ? variance : (values[k]! * (1 - values[k]!)) / fewer[k]!;
  });
  const only = { estimate: values[0]!, half: normalMultiplier(level) * Math.sqrt(within[0]!) };
  const { estimate, half } = speakers.length === 1 ? only : meanOf(values, within, level);
  const pairs = fewer.reduce((sum, n) => sum + n, 0);
  // Without any overlap the spread is 0 and says nothing: as if so many independent pairs had all been in order.
  const interval =
    half > 0
      ? { low: estimate - half, high: estimate + half }
      : exactInterval(estimate * pairs, pairs, level);
  return {
    estimate,
    low: Math.max(0, interval.low),
    high: Math.min(1, interval.high),
    pooled: areaUnderCurve(long, short),
    best,
    tokens: total(long) + total(short),
    speakers: speakers.length,
  };
}

function total(histogram: Float64Array): number {
  return histogram.reduce((sum, count) => sum + count, 0);
}

function meanOf(values: readonly number[], within: readonly number[], level: number) {
  const { estimate, variance, df, tokenVariance } = clusteredMean({
    values,
    weights: values.map(() => 1),
    within,
  });
  const half = Math.max(
    tMultiplier(level, df) * Math.sqrt(variance),
    normalMultiplier(level) * Math.sqrt(tokenVariance),
  );
  return { estimate, half };
}

function addUp(histograms: readonly Float64Array[]): Float64Array {
  const sum = new Float64Array(Math.max(...histograms.map((histogram) => histogram.length)));
  for (const histogram of histograms)
    for (let ms = 0; ms < histogram.length; ms++) sum[ms]! += histogram[ms]!;
  return sum;
}
