import type { DatasetWording } from "../../messages/datasets.ts";
import type { FileTree } from "../../storage/fileTree.ts";
import type { DatasetFile } from "../datasetFile.ts";
import type { TreeIndex } from "../treeIndex.ts";

/** An utterance as a layout finds it, before labels are given to it and ids are checked. */
export interface DraftUtterance {
  readonly id: string;
  /** Name its label file carries: the file name of its recording, or its id. */
  readonly stem: string;
  /** Null when the dataset has one speaker, or does not say. */
  readonly speaker: string | null;
  readonly style: string | null;
  readonly text: string | null;
  readonly reading: string | null;
  readonly accentReading: string | null;
  readonly audio: string | null;
  readonly audioStartSec: number | null;
  readonly audioEndSec: number | null;
  readonly file: string;
  readonly line: number | null;
}

export interface DraftProblem extends DatasetWording {
  readonly utterance: string | null;
  readonly file: string;
  readonly line: number | null;
}

export interface LayoutContext {
  readonly tree: FileTree;
  readonly index: TreeIndex;
  /** The dataset.json, null when there is none. */
  readonly file: DatasetFile | null;
  report(wording: DatasetWording, file: string, line?: number | null, utterance?: string | null): void;
}

export interface LayoutResult {
  readonly utterances: readonly DraftUtterance[];
  /** Where readings come from, in a few words; null when there are none. */
  readonly readingSource: string | null;
  /** The list that was read where a dataset keeps recordings that are in no list on purpose; null else. */
  readonly unlistedAudioBy: string | null;
  /** True when the dataset is known not to say who speaks. */
  readonly speakersUnknown: boolean;
}

export interface Layout {
  /** Stable short name, written on the card and in dataset.json. */
  readonly name: string;
  /** What it looks for, as a person would say it. */
  readonly title: string;
  /** Why the folder is one of this kind, in one sentence; null when it is not. */
  recognise(context: LayoutContext): string | null;
  read(context: LayoutContext): LayoutResult;
}

const blank = {
  speaker: null,
  style: null,
  text: null,
  reading: null,
  accentReading: null,
  audio: null,
  audioStartSec: null,
  audioEndSec: null,
  line: null,
} as const;

/** A draft with everything unknown null. */
export function draft(
  known: Partial<DraftUtterance> & Pick<DraftUtterance, "id" | "stem" | "file">,
): DraftUtterance {
  return { ...blank, ...known };
}

export function layoutResult(
  utterances: readonly DraftUtterance[],
  rest: Partial<LayoutResult> = {},
): LayoutResult {
  return { utterances, readingSource: null, unlistedAudioBy: null, speakersUnknown: false, ...rest };
}
