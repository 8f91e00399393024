import type { Interval } from "../alignment/interval.ts";
import type { Problem } from "../datasets/types.ts";
import { type AcousticRow, missingRow } from "../measures/acousticColumns.ts";
import { leastLabelMatch } from "../measures/acoustics/labelMatch.ts";
import type { SpeakerReference } from "../measures/acoustics/learnSpeaker.ts";
import { measureUtterance } from "../measures/acoustics/measureUtterance.ts";
import { noisyBelowDb, tooNoisyBelowDb } from "../measures/acoustics/recordingQuality.ts";
import { takeSpeakerSample } from "../measures/acoustics/speakerSample.ts";
import type { VoicingFrames } from "../measures/acoustics/voicingFrames.ts";
import { labelsDiffer } from "../messages/hearing.ts";
import { wordingsFor } from "../messages/measures.ts";
import { type Recording, recordingReader } from "../storage/openRecording.ts";
import { type FittingSets, fittingSets } from "./fittingSets.ts";
import type { OrderOf } from "./orders.ts";
import {
  type HearPart,
  type MeasurePart,
  readResults,
  requirePart,
  type SoundPart,
  soundKey,
} from "./parts.ts";
import { type MeasuredSets, recordingProblem, ShardRows } from "./shardRows.ts";
import type { ShardTools } from "./shardTools.ts";
import { alignedSetId, type TimedSet, timedSets } from "./timedSets.ts";
import { alignedOf } from "./voicesShard.ts";

/** Clipping is remarked by whoever decodes the recording. */
const qualityLimits = { noisyBelowDb, tooNoisyBelowDb, clippedAbove: 1 };

/** Remarks that opening the dataset made already, from the files' headers. */
const toldAtOpening: ReadonlySet<string> = new Set(["audio-extension"]);

/**
 * Measures every vowel and consonant of a shard and makes the rows of all tables. A recording that cannot be read or
 * judged keeps its times, with the reason; what is wrong with it is listed. Labels of another recording are left out.
 */
export async function measureShard(
  order: OrderOf<"measure">,
  { cache, files, pause, scratch }: ShardTools,
): Promise<MeasurePart> {
  const { recordings, speakers } = order;
  const heard = requirePart<HearPart>(cache, order.hear);
  const sounds = requirePart<SoundPart>(cache, soundKey(order.hear));
  const results = readResults(cache, order.read);
  const aligned = alignedOf(order, cache);
  const decode = recordingReader(files.of(recordings));
  const decoded = scratch?.take<readonly (Recording | null)[]>(order.hear) ?? null;
  const rows = new ShardRows();
  const problems: Problem[] = [];
  const bySpeaker = new Map(speakers);
  let alignedPhones = 0;
  let leftOutPhones = 0;
  for (const [place, result] of results.entries()) {
    await pause();
    const { utterance } = result;
    const voicing = sounds[place]?.voicing ?? null;
    const { fitting: timed, others } = fittingTo(voicing, timedSets(result, aligned, place));
    for (const { id, match } of others) {
      problems.push(recordingProblem(utterance, labelsDiffer(id, match, leastLabelMatch), true));
      leftOutPhones += result.labelled.find(({ labelSet }) => labelSet.id === id)!.phones;
    }
    const speaker = bySpeaker.get(utterance.speaker);
    const recording = recordings[place] ?? null;
    const refusal = heard[place]?.refusal ?? null;
    let measures: MeasuredSets = unmeasured(timed);
    if (recording !== null && timed.length > 0) {
      const note = (wording: { rule: string; message: string; wayOut: string }) =>
        problems.push(recordingProblem(utterance, wording, false));
      if (refusal !== null) note(refusal);
      else if (speaker !== undefined)
        measures = measure(decoded?.[place] ?? (await decode(recording)), timed, speaker, voicing!, note);
    }
    rows.add(result, timed, measures);
    alignedPhones += timed.find(({ labelSet }) => labelSet.id === alignedSetId)?.intervals.length ?? 0;
  }
  return rows.finish(problems, alignedPhones - leftOutPhones);
}

function measure(
  recording: Recording,
  sets: readonly TimedSet[],
  speaker: SpeakerReference,
  frames: VoicingFrames,
  note: (wording: { rule: string; message: string; wayOut: string }) => void,
): MeasuredSets {
  const { samples, warnings, durationSec, sampleRateHz, channelRule } = recording;
  for (const warning of warnings) if (!toldAtOpening.has(warning.rule)) note(warning);
  const rows = sets.map(({ intervals }, i) => {
    const sample = takeSpeakerSample(frames, intervals);
    const measured = measureUtterance(samples, intervals, sample, speaker, frames);
    if (i === 0) for (const wording of wordingsFor(measured.quality, qualityLimits)) note(wording);
    return measured.rows;
  });
  return { rows, recording: { durationSec, sampleRateHz, channelRule } };
}

function fittingTo(voicing: VoicingFrames | null, sets: readonly TimedSet[]): FittingSets {
  return voicing === null ? { fitting: sets, others: [] } : fittingSets(sets, voicing);
}

function unmeasured(sets: readonly TimedSet[]): MeasuredSets {
  return { rows: sets.map(({ intervals }) => intervals.map(unmeasuredRow)), recording: null };
}

function unmeasuredRow({ kind }: Interval): AcousticRow {
  return missingRow(kind === "pause" ? null : "no-audio");
}
