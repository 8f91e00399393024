import { extractFeatures, type Features } from "./alignment/features.ts";
import { addToSpeaker, createSpeakerMoments } from "./alignment/observations.ts";
import type { OpenDataset } from "./datasets/openDataset.ts";
import type { Problem, Utterance } from "./datasets/types.ts";
import type { OnProgress } from "./progress.ts";
import type { ReadResult } from "./readUtterances.ts";
import type { Moments } from "./signals/normalise.ts";
import { type ContentCache, codeVersion, contentKey } from "./storage/contentCache.ts";
import type { DiskList } from "./storage/diskList.ts";
import { type ReadRecording, refusalOf } from "./storage/openRecording.ts";

/** An utterance to align: its place in the list of results, and what its recording sounds like. */
export interface Heard {
  readonly place: number;
  /** Place in the list of features. */
  readonly features: number;
  readonly speaker: string;
  readonly durationMs: number;
  /** Stands for the recording's content and the code that heard it. */
  readonly key: string;
}

/** Code that features depend on. */
const hearingCode = ["alignment", "signals", "storage"] as const;

/** Turns the recordings at `places` into features, and sums them up by speaker. What cannot be read is listed. */
export async function hear(
  dataset: OpenDataset,
  results: DiskList<ReadResult>,
  places: readonly number[],
  features: DiskList<Features>,
  problems: Problem[],
  cache: ContentCache,
  record: ReadRecording,
  onProgress: OnProgress,
): Promise<{ heard: Heard[]; moments: Map<string, Moments> }> {
  const heard: Heard[] = [];
  const moments = new Map<string, Moments>();
  const code = codeVersion(hearingCode);
  for (const [i, place] of places.entries()) {
    if (i % 10 === 0) await report(onProgress, `Listening to ${dataset.card.id}`, i, places.length);
    const { utterance } = results.get(place);
    try {
      const key = recordingKey(dataset, utterance, code);
      const kept = cache.get<Features>(key);
      const found = kept ?? extractFeatures((await record(utterance)).samples);
      if (kept === null) cache.set(key, found);
      const sums = moments.get(utterance.speaker) ?? createSpeakerMoments();
      moments.set(utterance.speaker, sums);
      addToSpeaker(sums, found);
      heard.push({
        place,
        features: features.add(found),
        speaker: utterance.speaker,
        durationMs: found.durationMs,
        key,
      });
    } catch (error) {
      const refusal = refusalOf(error);
      if (refusal === null) throw error;
      problems.push(recordingProblem(utterance, refusal));
    }
  }
  await report(onProgress, `Listening to ${dataset.card.id}`, places.length, places.length);
  return { heard, moments };
}

function recordingKey(
  { tree }: OpenDataset,
  { audio, audioStartSec, audioEndSec }: Utterance,
  code: string,
): string {
  return contentKey("features", code, tree.read(audio!), String(audioStartSec), String(audioEndSec));
}

/** An utterance that is left out because of its recording. */
export function recordingProblem(
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

export async function report(
  onProgress: OnProgress,
  task: string,
  done: number,
  total: number,
  unit = "recordings",
): Promise<void> {
  onProgress({ task, done, total, unit });
  await new Promise(setImmediate);
}
