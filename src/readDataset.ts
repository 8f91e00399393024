import { join } from "node:path";
import { type AlignedDataset, alignDataset } from "./alignDataset.ts";
import type { ReferencePhone } from "./alignment/boundaryErrors.ts";
import type { Interval } from "./alignment/interval.ts";
import type { OpenDataset } from "./datasets/openDataset.ts";
import type { DatasetCard, LabelSetCard, Problem } from "./datasets/types.ts";
import { type Measurable, type MeasuredSets, measureRecordings } from "./measureRecordings.ts";
import type { AcousticRow, TokenRow, UtteranceRow } from "./measures/columns.ts";
import { toIntervalRows } from "./measures/toIntervalRows.ts";
import { type TokenContext, toTokens } from "./measures/toTokens.ts";
import type { Mora } from "./phonology/kana.ts";
import { wordOfMora } from "./phonology/words.ts";
import type { OnProgress } from "./progress.ts";
import { type LoadReader, type ReadResult, readUtterances } from "./readUtterances.ts";
import { DiskList } from "./storage/diskList.ts";
import { keptRecordings } from "./storage/openRecording.ts";
import type { ResultsWriter } from "./storage/resultsWriter.ts";

export interface ReadDatasetOptions {
  readonly writer: ResultsWriter;
  /** Folder for what does not fit into memory. */
  readonly work: string;
  /** Folder of what earlier runs worked out. */
  readonly cache: string;
  readonly loadReader: LoadReader;
  readonly seed: number;
  readonly onProgress: OnProgress;
}

export interface ReadDataset {
  /** The dataset's card with the label sets that were made here. */
  readonly card: DatasetCard;
  readonly problems: readonly Problem[];
  /** Phones in the label files and alignments that were used. */
  readonly phones: number;
}

/** One label set of one utterance, whoever placed its times. */
interface TimedSet {
  readonly labelSet: LabelSetCard;
  readonly intervals: readonly Interval[];
  readonly readingFits: boolean | null;
  /** Morae of the reading that was found to be spoken, where the recording decided. */
  readonly spoken: readonly Mora[] | null;
}

/**
 * Takes every utterance of a dataset through phonology, alignment and measures into the tables. Labels alone stream
 * through; recordings are heard several times: to align what has no labels, to learn the voices, and to measure.
 */
export async function readDataset(dataset: OpenDataset, options: ReadDatasetOptions): Promise<ReadDataset> {
  const { writer, work, loadReader, onProgress } = options;
  const { card } = dataset;
  const problems: Problem[] = [];
  let phones = 0;
  const heard = dataset.utterances.some(({ audio }) => audio !== null);
  const results = new DiskList<ReadResult>(join(work, `${card.id}.utterances`));
  const recordings = keptRecordings(dataset.tree, join(work, `${card.id}.recordings`));
  const record = recordings.read;
  let aligned: AlignedDataset | null = null;
  try {
    const reading = { loadReader, texts: "all", task: `Reading ${card.id}`, onProgress } as const;
    const unlabelled: number[] = [];
    const handLabelled = new Map<number, ReferencePhone[]>();
    for await (const result of readUtterances(dataset, reading)) {
      problems.push(...result.problems);
      phones += result.labelled.reduce((sum, set) => sum + set.phones, 0);
      if (heard) {
        const place = results.add(result);
        if (needsAlignment(result)) unlabelled.push(place);
        const byHand = labelsByHand(result);
        if (byHand !== null) handLabelled.set(place, byHand);
      } else writeUtterance(writer, result, labelledSets(result), null);
    }
    if (!heard) return { card, problems, phones };

    if (unlabelled.length > 0)
      aligned = await alignDataset(dataset, results, { unlabelled, handLabelled }, { ...options, record });
    problems.push(...(aligned?.problems ?? []));
    const timedAt = (place: number): { result: ReadResult; timed: TimedSet[] } => {
      const result = results.get(place);
      const sets = [...labelledSets(result), ...alignedSet(aligned, place)];
      return { result, timed: sets.filter(({ intervals }) => intervals.length > 0) };
    };
    const utteranceAt = (place: number): Measurable => {
      const { result, timed } = timedAt(place);
      return { utterance: result.utterance, sets: timed.map(({ intervals }) => intervals) };
    };
    let place = 0;
    const count = results.size;
    for await (const measures of measureRecordings({
      dataset,
      count,
      utteranceAt,
      work,
      record,
      onProgress,
      problems,
    })) {
      const { result, timed } = timedAt(place++);
      writeUtterance(writer, result, timed, measures);
      const own = timed.find(({ labelSet }) => labelSet === aligned?.labelSet);
      phones += own?.intervals.length ?? 0;
    }
    const made = aligned?.labelSet ?? null;
    return {
      card: made === null ? card : { ...card, labelSets: [...card.labelSets, made] },
      problems,
      phones,
    };
  } finally {
    aligned?.close();
    recordings.close();
    results.close();
  }
}

function labelledSets({ labelled }: ReadResult): TimedSet[] {
  return labelled.map(({ labelSet, intervals, readingFits }) => ({
    labelSet,
    intervals,
    readingFits,
    spoken: null,
  }));
}

/** Only what has a recording and a reading but no labels of its own that can be used. */
function needsAlignment({ utterance, read, labelled }: ReadResult): boolean {
  const usable = labelled.some(({ intervals }) => intervals.length > 0);
  return utterance.audio !== null && read.reading !== null && !usable && utterance.labels.length === 0;
}

/** Labels with times that people placed, of an utterance that could be aligned too. */
function labelsByHand({ utterance, read, labelled }: ReadResult): ReferencePhone[] | null {
  if (utterance.audio === null || read.reading === null) return null;
  const set = labelled.find(
    ({ labelSet, readingFits }) => labelSet.timeBasis === "annotated" && readingFits === true,
  );
  return set === undefined ? null : set.intervals.flatMap(referencePhones);
}

/** A geminate as its closure and the consonant after it, as the aligner has them. */
function referencePhones({ phone, startMs, endMs, closureEndMs, devoiced }: Interval): ReferencePhone[] {
  const whole = { phone, devoiced: devoiced === true, startMs, endMs };
  if (closureEndMs === null) return [whole];
  return [
    { ...whole, phone: "cl", endMs: closureEndMs },
    { ...whole, startMs: closureEndMs },
  ];
}

function alignedSet(aligned: AlignedDataset | null, place: number): TimedSet[] {
  const found = aligned?.alignedAt(place) ?? null;
  if (found === null || aligned?.labelSet == null) return [];
  return [{ labelSet: aligned.labelSet, intervals: found.intervals, readingFits: true, spoken: found.morae }];
}

function writeUtterance(
  writer: ResultsWriter,
  result: ReadResult,
  sets: readonly TimedSet[],
  measures: MeasuredSets | null,
): void {
  writer.utterances.append(utteranceRow(result, sets, measures?.recording ?? null));
  for (const [i, set] of sets.entries()) {
    const context = tokenContext(result, set);
    for (const row of toIntervalRows(set.intervals, context)) writer.intervals.append(row);
    for (const token of toTokens(set.intervals, context)) {
      const acoustics = measures?.rows[i]?.[token.index];
      if (acoustics === undefined) writer.tokens.append(token);
      else writer.appendMeasured(withHeardDevoicing(token, acoustics), acoustics);
    }
  }
}

/** What a person marked stands; what a rule predicted, or nobody marked, gives way to what was measured. */
function withHeardDevoicing(token: TokenRow, { devoicedHeard }: AcousticRow): TokenRow {
  if (token.devoicedBasis === "annotated" || devoicedHeard === null) return token;
  return { ...token, devoiced: devoicedHeard, devoicedBasis: "measured" };
}

function tokenContext({ utterance, read }: ReadResult, set: TimedSet): TokenContext {
  const { labelSet, readingFits, spoken } = set;
  const words = spoken === null || read.words.length === 0 ? read.wordOfMora : wordOfMora(read.words, spoken);
  return {
    dataset: utterance.dataset,
    labelSet: labelSet.id,
    speaker: utterance.speaker,
    utterance: utterance.id,
    timeBasis: labelSet.timeBasis,
    timeFloorMs: labelSet.timeFloorMs,
    devoicingBasis: labelSet.devoicingBasis,
    wordOfMora: readingFits === true ? words : null,
  };
}

function utteranceRow(
  { utterance, read }: ReadResult,
  sets: readonly TimedSet[],
  recording: MeasuredSets["recording"],
): UtteranceRow {
  const fits = sets.flatMap(({ readingFits }) => (readingFits === null ? [] : [readingFits]));
  return {
    dataset: utterance.dataset,
    utterance: utterance.id,
    speaker: utterance.speaker,
    style: utterance.style,
    text: utterance.text,
    reading: spokenKana(sets) ?? read.reading?.kana ?? null,
    readingFrom: read.reading?.from ?? null,
    audio: utterance.audio,
    audioStartSec: utterance.audioStartSec,
    audioEndSec: utterance.audioEndSec,
    audioSec: recording?.durationSec ?? null,
    audioRateHz: recording?.sampleRateHz ?? null,
    audioChannel: recording?.channelRule ?? null,
    labelSets: sets.filter(({ intervals }) => intervals.length > 0).length,
    readingFits: fits.length === 0 ? null : fits.every(Boolean),
  };
}

/** The reading that the recording decided on, where the text left a choice. */
function spokenKana(sets: readonly TimedSet[]): string | null {
  const spoken = sets.find((set) => set.spoken !== null)?.spoken ?? null;
  return spoken === null
    ? null
    : spoken.map(({ kana, breakAfter }) => `${kana}${breakAfter ? "、" : ""}`).join("");
}
