import { join } from "node:path";
import type { Interval } from "./alignment/interval.ts";
import type { OpenDataset } from "./datasets/openDataset.ts";
import type { Problem, Utterance } from "./datasets/types.ts";
import { type AcousticRow, missingRow } from "./measures/acousticColumns.ts";
import { learnSpeaker, type SpeakerReference } from "./measures/acoustics/learnSpeaker.ts";
import { measureUtterance } from "./measures/acoustics/measureUtterance.ts";
import { noisyBelowDb, tooNoisyBelowDb } from "./measures/acoustics/recordingQuality.ts";
import { type SpeakerSample, takeSpeakerSample } from "./measures/acoustics/speakerSample.ts";
import { analyseVoicing, type VoicingFrames } from "./measures/acoustics/voicingFrames.ts";
import { wordingsFor } from "./messages/measures.ts";
import type { OnProgress } from "./progress.ts";
import { DiskList } from "./storage/diskList.ts";
import { type ReadRecording, type Recording, refusalOf } from "./storage/openRecording.ts";

/** An utterance with the intervals of each of its label sets. */
export interface Measurable {
  readonly utterance: Utterance;
  readonly sets: readonly (readonly Interval[])[];
}

export interface MeasureOptions {
  readonly dataset: OpenDataset;
  /** Utterances, and the one at each place from 0. */
  readonly count: number;
  readonly utteranceAt: (place: number) => Measurable;
  /** Folder for what does not fit into memory. */
  readonly work: string;
  readonly record: ReadRecording;
  readonly onProgress: OnProgress;
  /** What is wrong with a recording is added here; nothing is left out of the tables because of it. */
  readonly problems: Problem[];
}

/** What one utterance's recording gave. */
export interface MeasuredSets {
  /** A row an interval, in order, for each label set. */
  readonly rows: readonly (readonly AcousticRow[])[];
  /** How the recording was read; null when it was not. */
  readonly recording: Pick<Recording, "durationSec" | "sampleRateHz" | "channelRule"> | null;
}

interface Learnt {
  readonly speakers: ReadonlyMap<string, SpeakerReference>;
  /** Frames that the first pass kept; null where it kept none. */
  readonly framesAt: (place: number) => VoicingFrames | null;
}

/** Clipping is remarked by whoever decodes the recording. */
const qualityLimits = { noisyBelowDb, tooNoisyBelowDb, clippedAbove: 1 };

/** Remarks that opening the dataset made already, from the files' headers. */
const toldAtOpening: ReadonlySet<string> = new Set(["audio-extension"]);

/** Recordings of one speaker from which the sound of voice and voicelessness is learnt; more teach nothing new. */
const recordingsPerSpeaker = 300;

/**
 * Measures the recordings of a dataset in two passes: first what voice and its absence sound like for each speaker,
 * then every vowel and consonant. A recording that cannot be read or judged keeps its times, with the reason.
 * Yields once for each place, in order.
 */
export async function* measureRecordings(options: MeasureOptions): AsyncGenerator<MeasuredSets> {
  const { dataset, count, utteranceAt, work, onProgress } = options;
  const kept = new DiskList<VoicingFrames>(join(work, `${dataset.card.id}.voicing`));
  try {
    const learnt = await learnSpeakers(options, kept);
    for (let place = 0; place < count; place++) {
      await report(onProgress, `Measuring ${dataset.card.id}`, place, count);
      yield await measureOne(utteranceAt(place), learnt, place, options);
    }
    await report(onProgress, `Measuring ${dataset.card.id}`, count, count);
  } finally {
    kept.close();
  }
}

async function measureOne(
  { utterance, sets }: Measurable,
  { speakers, framesAt }: Learnt,
  place: number,
  { problems, record }: MeasureOptions,
): Promise<MeasuredSets> {
  const unmeasured = { rows: sets.map((intervals) => intervals.map(unmeasuredRow)), recording: null };
  const speaker = speakers.get(utterance.speaker);
  if (utterance.audio === null || sets.length === 0 || speaker === undefined) return unmeasured;
  try {
    const recording = await record(utterance);
    const { samples } = recording;
    for (const warning of recording.warnings)
      if (!toldAtOpening.has(warning.rule)) problems.push(noted(utterance, warning));
    const frames = framesAt(place) ?? analyseVoicing(samples);
    const rows = sets.map((intervals, i) => {
      const sample = takeSpeakerSample(frames, intervals);
      const { quality, rows: measured } = measureUtterance(samples, intervals, sample, speaker, frames);
      if (i === 0)
        for (const wording of wordingsFor(quality, qualityLimits)) problems.push(noted(utterance, wording));
      return measured;
    });
    const { durationSec, sampleRateHz, channelRule } = recording;
    return { rows, recording: { durationSec, sampleRateHz, channelRule } };
  } catch (error) {
    const refusal = refusalOf(error);
    if (refusal === null) throw error;
    problems.push(noted(utterance, refusal));
    return unmeasured;
  }
}

async function learnSpeakers(
  { dataset, count, utteranceAt, record, onProgress }: MeasureOptions,
  kept: DiskList<VoicingFrames>,
): Promise<Learnt> {
  const keptAt = new Map<number, number>();
  const samples = new Map<string, SpeakerSample[]>();
  const task = `Learning voices of ${dataset.card.id}`;
  for (let place = 0; place < count; place++) {
    await report(onProgress, task, place, count);
    const { utterance, sets } = utteranceAt(place);
    const own = samples.get(utterance.speaker) ?? [];
    if (utterance.audio === null || sets.length === 0 || own.length >= recordingsPerSpeaker) continue;
    try {
      const frames = analyseVoicing((await record(utterance)).samples);
      own.push(takeSpeakerSample(frames, sets[0]!));
      samples.set(utterance.speaker, own);
      keptAt.set(place, kept.add(frames));
    } catch (error) {
      if (refusalOf(error) === null) throw error; // the second pass lists it
    }
  }
  await report(onProgress, task, count, count);
  return {
    speakers: new Map([...samples].map(([speaker, own]) => [speaker, learnSpeaker(own)])),
    framesAt: (place) => {
      const at = keptAt.get(place);
      return at === undefined ? null : kept.get(at);
    },
  };
}

function unmeasuredRow({ kind }: Interval): AcousticRow {
  return missingRow(kind === "pause" ? null : "no-audio");
}

function noted(
  { dataset, id, audio }: Utterance,
  { rule, message, wayOut }: { rule: string; message: string; wayOut: string },
): Problem {
  return { dataset, utterance: id, file: audio ?? "", line: null, rule, message, wayOut, excluded: false };
}

/** Recordings between two reports of progress. */
const reportEvery = 10;

async function report(onProgress: OnProgress, task: string, done: number, total: number): Promise<void> {
  if (done % reportEvery !== 0 && done !== total) return;
  onProgress({ task, done, total, unit: "recordings" });
  await new Promise(setImmediate);
}
