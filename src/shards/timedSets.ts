import { alignedIntervals } from "../alignment/alignedIntervals.ts";
import { applyCalibration } from "../alignment/calibrateBoundaries.ts";
import type { Interval } from "../alignment/interval.ts";
import { type ReadingParts, readingParts } from "../alignment/readingParts.ts";
import type { LabelSetCard } from "../datasets/types.ts";
import type { Mora } from "../phonology/kana.ts";
import type { ReadResult } from "../readUtterances.ts";
import type { Fitting } from "./orders.ts";
import type { AlignPart } from "./parts.ts";

/** Name of the label set that the project's own aligner makes. */
export const alignedSetId = "aligned";

/** One label set of one utterance, whoever placed its times. */
export interface TimedSet {
  readonly labelSet: LabelSetCard;
  readonly intervals: readonly Interval[];
  readonly readingFits: boolean | null;
  /** Morae of the reading that was found to be spoken, where the recording decided. */
  readonly spoken: readonly Mora[] | null;
}

/** What a shard's own alignments are, and which of them count. */
export interface Aligned {
  readonly alignments: AlignPart;
  readonly fitting: Fitting;
}

/** The label sets with times of the utterance at a place of a shard. */
export function timedSets(result: ReadResult, aligned: Aligned | null, place: number): TimedSet[] {
  const own = aligned === null ? null : alignedSet(result, aligned, place);
  const sets = own === null ? labelledSets(result) : [...labelledSets(result), own];
  return sets.filter(({ intervals }) => intervals.length > 0);
}

export function labelledSets({ labelled }: ReadResult): TimedSet[] {
  return labelled.map(({ labelSet, intervals, readingFits }) => ({
    labelSet,
    intervals,
    readingFits,
    spoken: null,
  }));
}

function alignedSet(result: ReadResult, { alignments, fitting }: Aligned, place: number): TimedSet | null {
  const found = fitting.aligned.includes(place) ? (alignments.get(place) ?? null) : null;
  if (found === null) return null;
  const alignment = fitting.calibration === null ? found : applyCalibration(found, fitting.calibration);
  const spoken = partsOf(result).resolve(alignment.phones.map(({ source }) => source));
  const { accentOfMora, morae } = result.read.reading!;
  const accents = spoken.morae.length === morae.length ? accentOfMora : null; // another reading was spoken
  const intervals = alignedIntervals(alignment, spoken, accents);
  return { labelSet: alignedSetCard(0, null, ""), intervals, readingFits: true, spoken: spoken.morae };
}

export function partsOf({ read }: ReadResult): ReadingParts {
  const { morae, choices } = read.reading!;
  return readingParts(morae, choices);
}

export function alignedSetCard(
  utterances: number,
  accentBasis: LabelSetCard["accentBasis"],
  note: string,
): LabelSetCard {
  return {
    id: alignedSetId,
    format: "start-end-phone",
    utterances,
    timeBasis: "aligned",
    timeGridMs: null,
    timeFloorMs: null,
    devoicingBasis: null,
    lengthFrom: "reading",
    accentBasis,
    note,
  };
}
