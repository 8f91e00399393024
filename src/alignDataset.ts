import { join } from "node:path";
import { alignedIntervals } from "./alignment/alignedIntervals.ts";
import { type Alignment, alignUtterance } from "./alignment/alignUtterance.ts";
import { chooseTrainingSample } from "./alignment/chooseTrainingSample.ts";
import { extractFeatures, type Features } from "./alignment/features.ts";
import { makePhoneGraph } from "./alignment/graph.ts";
import type { Interval } from "./alignment/interval.ts";
import { defaultMatchLimits, judgeMatches } from "./alignment/judgeMatches.ts";
import { addToSpeaker, createSpeakerMoments } from "./alignment/observations.ts";
import { type ReadingParts, readingParts, type SpokenReading } from "./alignment/readingParts.ts";
import { trainModel } from "./alignment/trainModel.ts";
import type { OpenDataset } from "./datasets/openDataset.ts";
import type { LabelSetCard, Problem, Utterance } from "./datasets/types.ts";
import { alignmentNote, recordingTooShortFor, textDiffers } from "./messages/hearing.ts";
import type { UtteranceReading } from "./phonology/readUtterance.ts";
import type { OnProgress } from "./progress.ts";
import type { ReadResult } from "./readUtterances.ts";
import { type Moments, type Normalisation, normalisationFrom } from "./signals/normalise.ts";
import { DiskList } from "./storage/diskList.ts";
import { recordingReader, refusalOf } from "./storage/openRecording.ts";

/** An utterance to align: its place in the list of results, and what its recording sounds like. */
interface Heard {
  readonly place: number;
  readonly features: number;
  readonly speaker: string;
  readonly durationMs: number;
}

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

export interface AlignOptions {
  /** Folder for what does not fit into memory. */
  readonly work: string;
  readonly seed: number;
  readonly onProgress: OnProgress;
}

/** Name of the label set that the project's own aligner makes. */
export const alignedSetId = "aligned";

/**
 * Finds the boundaries of utterances that have a recording and a reading but no labels: learns how the sounds of this
 * very dataset sound, aligns every utterance, and sets aside those whose recording does not fit their text.
 * `places` are the utterances' places in `results`.
 */
export async function alignDataset(
  dataset: OpenDataset,
  results: DiskList<ReadResult>,
  places: readonly number[],
  options: AlignOptions,
): Promise<AlignedDataset> {
  const { onProgress } = options;
  const { id } = dataset.card;
  const problems: Problem[] = [];
  const features = new DiskList<Features>(join(options.work, `${id}.features`));
  const alignments = new DiskList<Alignment>(join(options.work, `${id}.alignments`));
  const close = () => {
    features.close();
    alignments.close();
  };
  try {
    const { heard, moments } = await hear(dataset, results, places, features, problems, onProgress);
    if (heard.length === 0) return { labelSet: null, alignedAt: () => null, problems, close };
    const normalisations = new Map([...moments].map(([speaker, sums]) => [speaker, normalisationFrom(sums)]));
    const partsOf = (place: number): ReadingParts => {
      const { morae, choices } = readingAt(results, place);
      return readingParts(morae, choices);
    };
    const model = await learn(id, heard, features, partsOf, normalisations, options);

    const aligned = new Map<number, number>();
    for (const [i, { place, features: at, speaker }] of heard.entries()) {
      if (i % 20 === 0) await report(onProgress, `Aligning ${id}`, i, heard.length);
      const graph = makePhoneGraph(partsOf(place).parts);
      const alignment = alignUtterance(model, features.get(at), graph, normalisations.get(speaker)!);
      if (alignment === null) problems.push(problem(results.get(place).utterance, recordingTooShortFor()));
      else aligned.set(place, alignments.add(alignment));
    }
    await report(onProgress, `Aligning ${id}`, heard.length, heard.length);
    for (const place of mismatches(aligned, alignments, results, problems)) aligned.delete(place);
    return {
      labelSet: labelSetCard(aligned.size, alignmentNote(heard)),
      alignedAt: (place) => {
        const at = aligned.get(place);
        if (at === undefined) return null;
        const alignment = alignments.get(at);
        const spoken = partsOf(place).resolve(alignment.phones.map(({ source }) => source));
        const { accentOfMora } = readingAt(results, place);
        return { intervals: alignedIntervals(alignment, spoken, accentOfMora), morae: spoken.morae };
      },
      problems,
      close,
    };
  } catch (error) {
    close();
    throw error;
  }
}

async function hear(
  dataset: OpenDataset,
  results: DiskList<ReadResult>,
  places: readonly number[],
  features: DiskList<Features>,
  problems: Problem[],
  onProgress: OnProgress,
): Promise<{ heard: Heard[]; moments: Map<string, Moments> }> {
  const heard: Heard[] = [];
  const moments = new Map<string, Moments>();
  const record = recordingReader(dataset.tree);
  for (const [i, place] of places.entries()) {
    if (i % 10 === 0) await report(onProgress, `Listening to ${dataset.card.id}`, i, places.length);
    const { utterance } = results.get(place);
    try {
      const { samples } = await record(utterance);
      const found = extractFeatures(samples);
      const sums = moments.get(utterance.speaker) ?? createSpeakerMoments();
      moments.set(utterance.speaker, sums);
      addToSpeaker(sums, found);
      heard.push({
        place,
        features: features.add(found),
        speaker: utterance.speaker,
        durationMs: found.durationMs,
      });
    } catch (error) {
      const refusal = refusalOf(error);
      if (refusal === null) throw error;
      problems.push(problem(utterance, refusal));
    }
  }
  await report(onProgress, `Listening to ${dataset.card.id}`, places.length, places.length);
  return { heard, moments };
}

async function learn(
  id: string,
  heard: readonly Heard[],
  features: DiskList<Features>,
  partsOf: (place: number) => ReadingParts,
  normalisations: ReadonlyMap<string, Normalisation>,
  { seed, onProgress }: AlignOptions,
) {
  await report(onProgress, `Learning the sounds of ${id}`, 0, 1, "step");
  const { model } = trainModel(
    chooseTrainingSample(heard, { seed }).map((i) => {
      const { place, features: at, speaker } = heard[i]!;
      return {
        features: features.get(at),
        graph: makePhoneGraph(partsOf(place).parts),
        normalisation: normalisations.get(speaker)!,
      };
    }),
  );
  await report(onProgress, `Learning the sounds of ${id}`, 1, 1, "step");
  return model;
}

/** Places of the utterances whose recording does not fit their text; each is listed with the worst stretch. */
function mismatches(
  aligned: ReadonlyMap<number, number>,
  alignments: DiskList<Alignment>,
  results: DiskList<ReadResult>,
  problems: Problem[],
): number[] {
  const places = [...aligned.keys()];
  const matches = places.map((place) => alignments.get(aligned.get(place)!).match);
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
    problems.push(problem(results.get(place).utterance, wording));
    return true;
  });
}

function readingAt(results: DiskList<ReadResult>, place: number): UtteranceReading {
  return results.get(place).read.reading!;
}

function problem(
  { dataset, id, audio, file, line }: Utterance,
  wording: { rule: string; message: string; wayOut: string },
): Problem {
  const { rule, message, wayOut } = wording;
  return {
    dataset,
    utterance: id,
    file: audio ?? file,
    line: audio === null ? line : null,
    rule,
    message,
    wayOut,
    excluded: true,
  };
}

async function report(
  onProgress: OnProgress,
  task: string,
  done: number,
  total: number,
  unit = "recordings",
): Promise<void> {
  onProgress({ task, done, total, unit });
  await new Promise(setImmediate);
}

function labelSetCard(utterances: number, note: string): LabelSetCard {
  return {
    id: alignedSetId,
    format: "start-end-phone",
    utterances,
    timeBasis: "aligned",
    timeGridMs: null,
    timeFloorMs: null,
    devoicingBasis: null,
    lengthFrom: "reading",
    accentBasis: null,
    note,
  };
}
