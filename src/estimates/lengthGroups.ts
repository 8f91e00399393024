import type { CellDurations } from "./cellDurations.ts";
import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";
import type { Stratum } from "./pairedRatio.ts";
import { type PartHistograms, partHistograms } from "./partHistograms.ts";
import { labelOf, type Partition, partition, runsOf, sumByPart } from "./partition.ts";

/** One side of a contrast for one phone, all speakers together. */
export interface SideDurations {
  readonly tokens: number;
  readonly atFloor: number;
  readonly sumMs: number;
  readonly sumLogMs: number;
  readonly sumSquareLogMs: number;
  /** Tokens by whole ms. */
  readonly histogram: Float64Array;
}

/** Long and short tokens of one phone. */
export interface PhonePair {
  readonly phone: string;
  readonly long: SideDurations;
  readonly short: SideDurations;
}

/** What one row of ratios is made from. Phones without tokens on both sides are left out and named. */
export interface LengthGroup {
  readonly label: (dim: Dim) => string | null;
  readonly pairs: readonly PhonePair[];
  readonly strata: readonly Stratum[];
  readonly onesided: readonly string[];
}

interface Sums {
  readonly tokens: Float64Array;
  readonly atFloor: Float64Array;
  readonly sumMs: Float64Array;
  readonly sumLogMs: Float64Array;
  readonly sumSquareLogMs: Float64Array;
}

/** Groups of the selected cells by `dims`, each with its phones and strata, in the order of the labels. */
export function lengthGroups(
  cells: Cells,
  mask: Uint8Array,
  dims: readonly Dim[],
  durations: CellDurations,
  longLabel: string,
): LengthGroup[] {
  const within = (finer: readonly Dim[]) =>
    partition(cells, mask, [...dims, ...finer.filter((dim) => !dims.includes(dim))]);
  const byPhone = within(["phone", "length"]);
  const bySpeaker = within(["phone", "speaker", "length"]);
  const histograms = partHistograms(cells, byPhone, durations.skip);
  const phoneSums = sumsOf(byPhone, durations);
  const speakerSums = sumsOf(bySpeaker, durations);
  const speakerRuns = runsOf(bySpeaker, dims.length);
  return runsOf(byPhone, dims.length).map(([from, to], group) => {
    const { pairs, onesided } = pairsOf(cells, byPhone, phoneSums, histograms, from, to, longLabel);
    const paired = new Set(pairs.map((pair) => pair.phone));
    const strata = strataOf(cells, bySpeaker, speakerSums, speakerRuns[group]!, longLabel, paired);
    return { label: (dim) => labelOf(cells, byPhone, from, dim), pairs, strata, onesided };
  });
}

function sumsOf(parts: Partition, durations: CellDurations): Sums {
  const { tokens, atFloor, sumMs, sumLogMs, sumSquareLogMs } = durations;
  return {
    tokens: sumByPart(parts, tokens),
    atFloor: sumByPart(parts, atFloor),
    sumMs: sumByPart(parts, sumMs),
    sumLogMs: sumByPart(parts, sumLogMs),
    sumSquareLogMs: sumByPart(parts, sumSquareLogMs),
  };
}

function pairsOf(
  cells: Cells,
  parts: Partition,
  sums: Sums,
  histograms: PartHistograms,
  from: number,
  to: number,
  longLabel: string,
) {
  const found = new Map<string, { long?: SideDurations; short?: SideDurations }>();
  for (let part = from; part < to; part++) {
    if (sums.tokens[part] === 0) continue;
    const phone = String(labelOf(cells, parts, part, "phone"));
    const side = labelOf(cells, parts, part, "length") === longLabel ? "long" : "short";
    const pair = found.get(phone) ?? {};
    found.set(phone, pair);
    pair[side] = { ...at(sums, part), histogram: histograms.of(part) };
  }
  const pairs: PhonePair[] = [];
  const onesided: string[] = [];
  for (const [phone, { long, short }] of found) {
    if (long && short) pairs.push({ phone, long, short });
    else onesided.push(phone);
  }
  return { pairs, onesided };
}

function strataOf(
  cells: Cells,
  parts: Partition,
  sums: Sums,
  [from, to]: readonly [number, number],
  longLabel: string,
  phones: ReadonlySet<string>,
): Stratum[] {
  const found = new Map<string, { speaker: number; phone: number; long?: Side; short?: Side }>();
  const width = parts.dims.length;
  const codeOf = (part: number, dim: Dim) => parts.codes[part * width + parts.dims.indexOf(dim)]!;
  for (let part = from; part < to; part++) {
    if (sums.tokens[part] === 0 || !phones.has(String(labelOf(cells, parts, part, "phone")))) continue;
    const [speaker, phone] = [codeOf(part, "speaker"), codeOf(part, "phone")];
    const stratum = found.get(`${speaker} ${phone}`) ?? { speaker, phone };
    found.set(`${speaker} ${phone}`, stratum);
    stratum[labelOf(cells, parts, part, "length") === longLabel ? "long" : "short"] = at(sums, part);
  }
  const strata: Stratum[] = [];
  for (const { speaker, phone, long, short } of found.values())
    if (long && short) strata.push({ speaker, phone, long, short });
  return strata;
}

type Side = ReturnType<typeof at>;

function at(sums: Sums, part: number) {
  return {
    tokens: sums.tokens[part]!,
    atFloor: sums.atFloor[part]!,
    sumMs: sums.sumMs[part]!,
    sumLogMs: sums.sumLogMs[part]!,
    sumSquareLogMs: sums.sumSquareLogMs[part]!,
  };
}
