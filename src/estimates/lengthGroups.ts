import { type Basis, isEvidence } from "../basis.ts";
import type { CellDurations } from "./cellDurations.ts";
import type { Cells, Dimension } from "./cells.ts";
import type { Dim } from "./dimensions.ts";
import type { Stratum } from "./pairedRatio.ts";
import { partHistograms } from "./partHistograms.ts";
import { labelOf, type Partition, partition, runsOf } from "./partition.ts";
import type { Selection } from "./selection.ts";

/** Tokens of one kind and what their durations add up to. */
export interface DurationSums {
  tokens: number;
  atFloor: number;
  /** Devoiced by a mark that is evidence, not by a text rule; NaN where that is not known. */
  devoiced: number;
  sumMs: number;
  sumLogMs: number;
  sumSquareLogMs: number;
}

/** One side of a contrast for one phone, all speakers together. */
export interface SideDurations extends Readonly<DurationSums> {
  /** Tokens by whole ms. */
  readonly histogram: Float64Array;
}

/** Long and short tokens of one phone. */
export interface PhonePair {
  readonly phone: string;
  readonly long: SideDurations;
  readonly short: SideDurations;
}

/** Long and short tokens of one speaker and phone, both sides occupied; `phone` counts the pairs from 0. */
export interface DurationStratum extends Stratum {
  readonly long: Readonly<DurationSums>;
  readonly short: Readonly<DurationSums>;
}

/** What one row of ratios is made from. Phones without tokens on both sides are left out and named. */
export interface LengthGroup {
  readonly label: (dim: Dim) => string | null;
  readonly pairs: readonly PhonePair[];
  readonly strata: readonly DurationStratum[];
  readonly onesided: readonly string[];
}

/** Groups of the selected cells by `dims`, each with its phones and strata, in the order of the labels. */
export function lengthGroups(
  cells: Cells,
  selection: Selection,
  dims: readonly Dim[],
  durations: CellDurations,
  longLabel: string,
): LengthGroup[] {
  const finer = (...more: readonly Dim[]) =>
    partition(cells, selection, [...dims, ...more.filter((dim) => !dims.includes(dim))]);
  const byPhone = finer("phone", "length");
  const bySpeaker = finer("phone", "length", "speaker");
  const histograms = partHistograms(cells, byPhone, durations.skip);
  const speakerSums = sumsOf(bySpeaker, durations, cells.dimensions.devoicedBasis);
  const speakerRuns = runsOf(bySpeaker, byPhone.dims.length);

  return runsOf(byPhone, dims.length).map(([from, to]) => {
    const phones = new Map<string, { long?: Side; short?: Side }>();
    for (let part = from; part < to; part++) {
      const speakers = speakersOf(bySpeaker, speakerRuns[part]!, speakerSums);
      const total = addAll(speakers.map(({ sums }) => sums));
      if (total.tokens === 0) continue;
      const phone = String(labelOf(cells, byPhone, part, "phone"));
      const side = labelOf(cells, byPhone, part, "length") === longLabel ? "long" : "short";
      phones.set(phone, {
        ...phones.get(phone),
        [side]: { durations: { ...total, histogram: histograms.of(part) }, speakers },
      });
    }
    return { label: (dim) => labelOf(cells, byPhone, from, dim), ...pairUp(phones) };
  });
}

interface Side {
  readonly durations: SideDurations;
  readonly speakers: readonly SpeakerSums[];
}

interface SpeakerSums {
  readonly speaker: number;
  readonly sums: DurationSums;
}

function pairUp(phones: ReadonlyMap<string, { long?: Side; short?: Side }>) {
  const pairs: PhonePair[] = [];
  const strata: DurationStratum[] = [];
  const onesided: string[] = [];
  for (const [phone, { long, short }] of phones) {
    if (!long || !short) {
      onesided.push(phone);
      continue;
    }
    const number = pairs.push({ phone, long: long.durations, short: short.durations }) - 1;
    const shortOf = new Map(short.speakers.map(({ speaker, sums }) => [speaker, sums]));
    for (const { speaker, sums } of long.speakers) {
      const partner = shortOf.get(speaker);
      if (partner && partner.tokens > 0 && sums.tokens > 0)
        strata.push({ speaker, phone: number, long: sums, short: partner });
    }
  }
  return { pairs, strata, onesided };
}

function sumsOf(parts: Partition, durations: CellDurations, { codes, labels }: Dimension): DurationSums[] {
  const { selection, partOf, count } = parts;
  const { tokens, atFloor, sumMs, sumLogMs, sumSquareLogMs, devoiced } = durations;
  const evident = labels.map((basis) => basis !== null && isEvidence(basis as Basis));
  const width = 6;
  const sums = new Float64Array(count * width);
  for (let i = 0; i < partOf.length; i++) {
    const at = partOf[i]! * width;
    const cell = selection[i]!;
    sums[at]! += tokens[cell]!;
    sums[at + 1]! += atFloor[cell]!;
    sums[at + 2]! += sumMs[cell]!;
    sums[at + 3]! += sumLogMs[cell]!;
    sums[at + 4]! += sumSquareLogMs[cell]!;
    if (devoiced === null) sums[at + 5] = Number.NaN;
    else if (evident[codes[cell]!]) sums[at + 5]! += devoiced[cell]!;
  }
  return Array.from({ length: count }, (_, part) => ({
    tokens: sums[part * width]!,
    atFloor: sums[part * width + 1]!,
    sumMs: sums[part * width + 2]!,
    sumLogMs: sums[part * width + 3]!,
    sumSquareLogMs: sums[part * width + 4]!,
    devoiced: sums[part * width + 5]!,
  }));
}

function speakersOf(
  parts: Partition,
  [from, to]: readonly [number, number],
  sums: readonly DurationSums[],
): SpeakerSums[] {
  const width = parts.dims.length;
  const column = parts.dims.indexOf("speaker");
  return Array.from({ length: to - from }, (_, i) => ({
    speaker: parts.codes[(from + i) * width + column]!,
    sums: sums[from + i]!,
  }));
}

function addAll(all: readonly DurationSums[]): DurationSums {
  const total: DurationSums = {
    ...{ tokens: 0, atFloor: 0, devoiced: 0 },
    ...{ sumMs: 0, sumLogMs: 0, sumSquareLogMs: 0 },
  };
  for (const sums of all)
    for (const name of Object.keys(total) as (keyof DurationSums)[]) total[name] += sums[name];
  return total;
}
