import { type AudioWording, audioPartOutside } from "../messages/audio.ts";
import {
  audioMissing,
  audioMissingLabelled,
  audioWithoutLine,
  idDuplicate,
  nothingToMeasure,
  textEmpty,
  textHasMarkup,
  textTooLong,
} from "../messages/datasets.ts";
import { audioDurations } from "./audioDurations.ts";
import { fittingLabels } from "./fittingLabels.ts";
import { type LabelSet, labelFilesOf } from "./labelSets.ts";
import type { DraftUtterance, LayoutContext } from "./layouts/layout.ts";
import type { LabelFile, Utterance } from "./types.ts";

const markup = /<\/?[a-z!][^<>]*>|&(?:[a-z]+|#\d+|#x[0-9a-f]+);/i;
/** Lists round times to a hundredth of a second; a part may end that much after its recording. */
const partToleranceSec = 0.01;
const secondsPerHour = 3600;
/** Longest text or reading of one utterance, in characters: more than ten minutes of speech. */
const longestText = 5000;

export interface AssembleOptions {
  /** Id of the dataset. */
  readonly id: string;
  readonly speakerOf: (draft: DraftUtterance, labelPath: string | null) => string;
  /** True when recordings that are in no list are nothing unusual; they are then counted, not reported one by one. */
  readonly unlistedExpected: boolean;
}

export interface Assembled {
  readonly utterances: readonly Utterance[];
  /** Recordings in no list. */
  readonly unlisted: number;
  /** Hours of the recordings used, by their headers; null when there are none. */
  readonly audioHours: number | null;
}

/** Property by property: of a corpus with hundreds of thousands, copies by spreading take twice the memory. */
function utteranceOf(
  { id, style, reading, accentReading, audioStartSec, audioEndSec, file, line }: DraftUtterance,
  {
    dataset,
    speaker,
    text,
    audio,
    labels,
  }: Pick<Utterance, "dataset" | "speaker" | "text" | "audio" | "labels">,
): Utterance {
  return {
    dataset,
    id,
    speaker,
    style,
    text,
    reading,
    accentReading,
    audio,
    audioStartSec,
    audioEndSec,
    labels,
    file,
    line,
  };
}

/** Utterances that can be measured: with labels, or with a recording and its words. Every one left out is reported. */
export function assembleUtterances(
  drafts: readonly DraftUtterance[],
  sets: readonly LabelSet[],
  options: AssembleOptions,
  context: LayoutContext,
): Assembled {
  const durationOf = audioDurations(context.tree);
  const first = new Map<string, DraftUtterance>();
  const listed = new Set<string>();
  const used = new Map<string, number>();
  const utterances: Utterance[] = [];
  for (const [index, draft] of drafts.entries()) {
    if (draft.audio !== null) listed.add(draft.audio);
    const other = first.get(draft.id);
    if (other !== undefined) {
      context.report(idDuplicate(draft.id, other.file, other.line), draft.file, draft.line, draft.id);
      continue;
    }
    first.set(draft.id, draft);
    const duration = usableDuration(draft, durationOf, context);
    const audio = duration === null ? null : draft.audio;
    const given = labelFilesOf(sets, index);
    const labels = duration === null ? given : fittingLabels(given, duration, draft.id, context);
    const reported = draft.audio !== null && audio === null;
    if (!isMeasurable({ ...draft, audio }, labels, reported, context)) continue;
    if (audio !== null && duration !== null) {
      if (duration.remark !== null && !used.has(audio))
        context.report({ ...duration.remark, excluded: false }, audio);
      used.set(audio, duration.fileSec);
    }
    const text = draft.text === "" ? null : draft.text;
    const characters = Math.max(...[text, draft.reading, draft.accentReading].map((one) => one?.length ?? 0));
    if (characters > longestText) {
      context.report(textTooLong(draft.id, characters, longestText), draft.file, draft.line, draft.id);
      continue;
    }
    if (text !== null && markup.test(text))
      context.report(textHasMarkup(text), draft.file, draft.line, draft.id);
    const speaker = options.speakerOf(draft, labels[0]?.path ?? null);
    utterances.push(utteranceOf(draft, { dataset: options.id, speaker, text, audio, labels }));
  }
  const unlisted = context.index.audio.filter((path) => !listed.has(path));
  if (!options.unlistedExpected) for (const path of unlisted) context.report(audioWithoutLine(path), path);
  const totalSec = [...used.values()].reduce((sum, durationSec) => sum + durationSec, 0);
  return {
    utterances,
    unlisted: unlisted.length,
    audioHours: used.size === 0 ? null : totalSec / secondsPerHour,
  };
}

interface UsableAudio {
  /** Length of the part that is the utterance. */
  readonly durationSec: number;
  readonly fileSec: number;
  readonly exact: boolean;
  readonly remark: AudioWording | null;
}

/** Lengths of the draft's part and file; null, and reported, when the recording or the part asked for cannot be used. */
function usableDuration(
  { id, audio, audioStartSec, audioEndSec, file, line }: DraftUtterance,
  durationOf: ReturnType<typeof audioDurations>,
  { report }: LayoutContext,
): UsableAudio | null {
  if (audio === null) return null;
  const found = durationOf(audio);
  if (found.refused !== null) {
    report({ ...found.refused, excluded: true }, audio, null, id);
    return null;
  }
  const fileSec = found.durationSec;
  const [start, end] = [audioStartSec ?? 0, audioEndSec ?? fileSec];
  if (start < fileSec && end <= fileSec + partToleranceSec)
    return { durationSec: end - start, fileSec, exact: found.exact, remark: found.remark };
  report({ ...audioPartOutside(start, end, fileSec), excluded: true }, file, line, id);
  return null;
}

function isMeasurable(
  draft: DraftUtterance,
  labels: readonly LabelFile[],
  audioReported: boolean,
  { index, report }: LayoutContext,
): boolean {
  const { id, audio, text, reading, file, line } = draft;
  const datasetHasAudio = index.audio.length > 0;
  if (labels.length > 0) {
    if (audio === null && datasetHasAudio && !audioReported) report(audioMissingLabelled(id), file, line, id);
    return true;
  }
  if (audio === null) {
    if (!audioReported) report(datasetHasAudio ? audioMissing(id) : nothingToMeasure(id), file, line, id);
    return false;
  }
  if (text || reading) return true;
  report(line === null ? audioWithoutLine(audio) : textEmpty(id), file, line, id);
  return false;
}
