import {
  audioMissing,
  audioMissingLabelled,
  audioWithoutLine,
  fileEmpty,
  idDuplicate,
  nothingToMeasure,
  textEmpty,
  textHasMarkup,
} from "../messages/datasets.ts";
import { type LabelSet, labelFilesOf } from "./labelSets.ts";
import type { DraftUtterance, LayoutContext } from "./layouts/layout.ts";
import type { LabelFile, Utterance } from "./types.ts";

const markup = /<\/?[a-z!][^<>]*>|&(?:[a-z]+|#\d+|#x[0-9a-f]+);/i;

export interface AssembleOptions {
  /** Id of the dataset. */
  readonly id: string;
  readonly speakerOf: (draft: DraftUtterance, labelPath: string | null) => string;
  /** True when recordings that are in no list are nothing unusual; they are then counted, not reported one by one. */
  readonly unlistedExpected: boolean;
}

/** Utterances that can be measured: with labels, or with a recording and its words. Every one left out is reported. */
export function assembleUtterances(
  drafts: readonly DraftUtterance[],
  sets: readonly LabelSet[],
  options: AssembleOptions,
  context: LayoutContext,
): { utterances: readonly Utterance[]; unlisted: number } {
  const sizes = new Map(context.tree.files.map(({ path, sizeBytes }) => [path, sizeBytes]));
  const first = new Map<string, DraftUtterance>();
  const listed = new Set<string>();
  const utterances: Utterance[] = [];
  for (const [index, draft] of drafts.entries()) {
    if (draft.audio !== null) listed.add(draft.audio);
    const other = first.get(draft.id);
    if (other !== undefined) {
      context.report(idDuplicate(draft.id, other.file, other.line), draft.file, draft.line, draft.id);
      continue;
    }
    first.set(draft.id, draft);
    const isEmpty = draft.audio !== null && sizes.get(draft.audio) === 0;
    if (isEmpty) context.report(fileEmpty(), draft.audio!, null, draft.id);
    const audio = isEmpty ? null : draft.audio;
    const labels = labelFilesOf(sets, index);
    if (!isMeasurable({ ...draft, audio }, labels, isEmpty, context)) continue;
    const { text } = draft;
    if (text !== null && markup.test(text))
      context.report(textHasMarkup(text), draft.file, draft.line, draft.id);
    const speaker = options.speakerOf(draft, labels[0]?.path ?? null);
    const { stem: _, ...rest } = draft;
    utterances.push({
      ...rest,
      dataset: options.id,
      speaker,
      text: text === "" ? null : text,
      audio,
      labels,
    });
  }
  const unlisted = context.index.audio.filter((path) => !listed.has(path));
  if (!options.unlistedExpected) for (const path of unlisted) context.report(audioWithoutLine(path), path);
  return { utterances, unlisted: unlisted.length };
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
