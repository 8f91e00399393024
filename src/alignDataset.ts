import { join } from "node:path";
import { seedHelps } from "./alignment/adaptModel.ts";
import { alignedIntervals } from "./alignment/alignedIntervals.ts";
import { type Alignment, alignUtterance } from "./alignment/alignUtterance.ts";
import type { ReferencePhone } from "./alignment/boundaryErrors.ts";
import {
  applyCalibration,
  type BoundaryCalibration,
  calibrateBoundaries,
} from "./alignment/calibrateBoundaries.ts";
import type { Features } from "./alignment/features.ts";
import { makePhoneGraph } from "./alignment/graph.ts";
import type { Interval } from "./alignment/interval.ts";
import { defaultMatchLimits, judgeMatches } from "./alignment/judgeMatches.ts";
import { type ReadingParts, readingParts, type SpokenReading } from "./alignment/readingParts.ts";
import type { OpenDataset } from "./datasets/openDataset.ts";
import type { DatasetCard, LabelSetCard, Problem } from "./datasets/types.ts";
import { hear, recordingProblem, report } from "./hearDataset.ts";
import { learnModel } from "./learnModel.ts";
import { alignmentNote, littleToLearnFrom, recordingTooShortFor, textDiffers } from "./messages/hearing.ts";
import type { UtteranceReading } from "./phonology/readUtterance.ts";
import type { OnProgress } from "./progress.ts";
import type { ReadResult } from "./readUtterances.ts";
import { normalisationFrom } from "./signals/normalise.ts";
import { ContentCache } from "./storage/contentCache.ts";
import { DiskList } from "./storage/diskList.ts";
import type { ReadRecording } from "./storage/openRecording.ts";

export interface AlignedDataset {
  /** The label set that the aligner made; null when there was nothing to align. */
  readonly labelSet: LabelSetCard | null;
  /** Intervals of the utterance at a place of the results, and the reading that was spoken; null when set aside. */
  readonly alignedAt: (place: number) => AlignedUtterance | null;
  readonly problems: readonly Problem[];
  readonly close: () => void;
}

export interface AlignedUtterance {
  readonly intervals: readonly Interval[];
  readonly morae: SpokenReading["morae"];
}

/** Utterances by their places in the list of results. */
export interface ToAlign {
  readonly unlabelled: readonly number[];
  /** Labels placed by people, of utterances that are heard too. */
  readonly handLabelled: ReadonlyMap<number, readonly ReferencePhone[]>;
}

export interface AlignOptions {
  /** Folder for what does not fit into memory. */
  readonly work: string;
  /** Folder of what earlier runs worked out. */
  readonly cache: string;
  readonly record: ReadRecording;
  readonly seed: number;
  readonly onProgress: OnProgress;
}

/** Name of the label set that the project's own aligner makes. */
export const alignedSetId = "aligned";

/**
 * Finds the boundaries of utterances that have a recording and a reading but no labels: learns how the sounds of this
 * very dataset sound, aligns every utterance, and sets aside those whose recording does not fit their text.
 * Utterances labelled by hand help to learn, and tell how far our boundaries lie from where people put them.
 */
export async function alignDataset(
  dataset: OpenDataset,
  results: DiskList<ReadResult>,
  { unlabelled, handLabelled }: ToAlign,
  options: AlignOptions,
): Promise<AlignedDataset> {
  const { onProgress } = options;
  const places = [...unlabelled, ...handLabelled.keys()].sort((a, b) => a - b);
  const { id } = dataset.card;
  const problems: Problem[] = [];
  const features = new DiskList<Features>(join(options.work, `${id}.features`));
  const alignments = new DiskList<Alignment>(join(options.work, `${id}.alignments`));
  const close = () => {
    features.close();
    alignments.close();
  };
  try {
    const { heard, moments } = await hear(
      dataset,
      results,
      places,
      features,
      problems,
      new ContentCache(options.cache),
      options.record,
      onProgress,
    );
    if (heard.length === 0) return { labelSet: null, alignedAt: () => null, problems, close };
    const normalisations = new Map([...moments].map(([speaker, sums]) => [speaker, normalisationFrom(sums)]));
    const partsOf = (place: number): ReadingParts => {
      const { morae, choices } = readingAt(results, place);
      return readingParts(morae, choices);
    };
    const spokenMs = heard.reduce((sum, { durationMs }) => sum + durationMs, 0);
    if (spokenMs < littleSpeechMs) problems.push(littleSpeech(dataset.card, spokenMs));
    const model = await learnModel(id, heard, features, partsOf, normalisations, options);

    const aligned = new Map<number, number>();
    for (const [i, { place, features: at, speaker }] of heard.entries()) {
      if (i % 20 === 0) await report(onProgress, `Aligning ${id}`, i, heard.length);
      const graph = makePhoneGraph(partsOf(place).parts);
      const alignment = alignUtterance(model, features.get(at), graph, normalisations.get(speaker)!);
      if (alignment === null)
        problems.push(recordingProblem(results.get(place).utterance, recordingTooShortFor()));
      else aligned.set(place, alignments.add(alignment));
    }
    await report(onProgress, `Aligning ${id}`, heard.length, heard.length);
    for (const place of mismatches(aligned, alignments, results, problems)) aligned.delete(place);
    const calibration = calibrate(aligned, alignments, handLabelled);
    for (const place of handLabelled.keys()) aligned.delete(place);
    return {
      labelSet: labelSetCard(
        aligned.size,
        heard.some(({ place }) => accentIsPredicted(readingAt(results, place))) ? "predicted" : null,
        alignmentNote(spokenMs, seedHelps(spokenMs), calibration?.boundaries ?? null),
      ),
      alignedAt: (place) => {
        const at = aligned.get(place);
        if (at === undefined) return null;
        const found = alignments.get(at);
        const alignment = calibration === null ? found : applyCalibration(found, calibration);
        const spoken = partsOf(place).resolve(alignment.phones.map(({ source }) => source));
        const { accentOfMora, morae } = readingAt(results, place);
        const accents = spoken.morae.length === morae.length ? accentOfMora : null; // another reading was spoken
        return { intervals: alignedIntervals(alignment, spoken, accents), morae: spoken.morae };
      },
      problems,
      close,
    };
  } catch (error) {
    close();
    throw error;
  }
}

/** Among fewer recordings than this the middle and its spread are too unsure to call one an outlier. */
const leastToJudge = 12;

/** Places of the utterances whose recording does not fit their text; each is listed with the worst stretch. */
function mismatches(
  aligned: ReadonlyMap<number, number>,
  alignments: DiskList<Alignment>,
  results: DiskList<ReadResult>,
  problems: Problem[],
): number[] {
  const places = [...aligned.keys()];
  const matches = places.map((place) => alignments.get(aligned.get(place)!).match);
  if (matches.length < leastToJudge) return [];
  const verdicts = judgeMatches(matches);
  return places.filter((place, i) => {
    const { mismatch, gapDeviation, worstDeviation } = verdicts[i]!;
    if (mismatch === null) return false;
    const wording = textDiffers(
      mismatch,
      { gapDeviation, worstDeviation },
      defaultMatchLimits,
      matches[i]!.worst,
    );
    problems.push(recordingProblem(results.get(place).utterance, wording));
    return true;
  });
}

/** Less speech than this teaches the sounds less well: boundaries within 20 ms fall from 93 to below 92 % on reference speech. */
const littleSpeechMs = 120_000;

function littleSpeech({ id }: DatasetCard, spokenMs: number): Problem {
  const wording = littleToLearnFrom(spokenMs / 1000, littleSpeechMs / 1000, seedHelps(spokenMs));
  return { dataset: id, utterance: null, file: "", line: null, ...wording, excluded: false };
}

/** Fewer hand-placed boundaries than this say too little of where people put them: about half a minute of speech. */
const leastBoundaries = 200;

/** Offsets of our boundaries from those that people placed; null when there are too few of them. */
function calibrate(
  aligned: ReadonlyMap<number, number>,
  alignments: DiskList<Alignment>,
  handLabelled: ToAlign["handLabelled"],
): BoundaryCalibration | null {
  const pairs = [...handLabelled].flatMap(([place, labels]) => {
    const at = aligned.get(place);
    return at === undefined ? [] : [{ alignment: alignments.get(at), labels }];
  });
  if (pairs.length === 0) return null;
  const calibration = calibrateBoundaries(pairs);
  return calibration.boundaries < leastBoundaries ? null : calibration;
}

function readingAt(results: DiskList<ReadResult>, place: number): UtteranceReading {
  return results.get(place).read.reading!;
}

function accentIsPredicted({ from, accentOfMora }: UtteranceReading): boolean {
  return from === "predicted" && accentOfMora !== null;
}

function labelSetCard(
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
