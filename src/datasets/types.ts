import type { Basis } from "../basis.ts";

/** What may be done with a dataset's recordings when a site is published. */
export interface Redistribution {
  /** `all`: every clip may be published; `excerpt`: at most `utterances` of them; `none`: no clip leaves the machine. */
  readonly kind: "all" | "excerpt" | "none";
  /** Number of utterances an excerpt may hold; null unless `kind` is `excerpt`. */
  readonly utterances: number | null;
  /** The reason in one sentence, shown where a clip is missing. */
  readonly note: string;
}

export const labelFormats = ["start-end-phone", "full-context", "ctm"] as const;
/** `start-end-phone`: three columns, seconds or 100 ns units; `full-context`: 100 ns, phone between - and +; `ctm`: NIST CTM. */
export type LabelFormat = (typeof labelFormats)[number];

/** One way in which a dataset is labelled. Several label sets may describe the same recordings; they are never pooled. */
export interface LabelSetCard {
  readonly id: string;
  readonly format: LabelFormat;
  readonly utterances: number;
  /** How the boundaries came about. */
  readonly timeBasis: Basis;
  /** True where the dataset does not say how its boundaries, or its marks, came about and a basis was assumed. */
  readonly timesUnstated?: true;
  readonly marksUnstated?: true;
  /** Step of the time grid in ms, null when the times are on no grid. */
  readonly timeGridMs: number | null;
  /** Shortest duration the aligner can give, in ms; null when there is none. */
  readonly timeFloorMs: number | null;
  /** How devoicing marks came about; null when the set carries none. */
  readonly devoicingBasis: Basis | null;
  /** What tells a long vowel: a mark in the label, the reading, or nothing. */
  readonly lengthFrom: "label" | "reading" | null;
  /** How accent came about; null when unknown. */
  readonly accentBasis: Basis | null;
  /** Where these facts come from, in one sentence. */
  readonly note: string;
}

/** What a dataset is, who made it and what may be done with it. Counts are of what was found on disk. */
export interface DatasetCard {
  /** Short name, `[a-z0-9-]+`, unique within a run. */
  readonly id: string;
  readonly name: string;
  readonly version: string | null;
  readonly licence: { readonly name: string; readonly url: string | null };
  readonly citation: string | null;
  readonly homePage: string | null;
  readonly redistribution: Redistribution;
  /** Credits that must stand wherever results are shown. */
  readonly attribution: readonly string[];
  /** Name of the layout the folder was recognised as. */
  readonly layout: string;
  /** Why it was recognised as that, in one sentence. */
  readonly recognisedBy: string;
  /** True for a voice made by a machine: its numbers are no evidence about Japanese. */
  readonly synthetic: boolean;
  /** A sentence every page and table made from this dataset must show; null when there is none. */
  readonly notice: string | null;
  readonly speakers: number;
  readonly utterances: number;
  /** Hours of audio found, from the files' headers; null when there is no audio. */
  readonly audioHours: number | null;
  readonly readings: { readonly utterances: number; readonly source: string | null };
  readonly labelSets: readonly LabelSetCard[];
}

/** A label file of one utterance, path relative to the dataset folder. */
export interface LabelFile {
  readonly labelSet: string;
  readonly format: LabelFormat;
  readonly path: string;
}

/** One recording with what is written about it. Paths are relative to the dataset folder and stay inside it. */
export interface Utterance {
  readonly dataset: string;
  /** Unique within the dataset. */
  readonly id: string;
  readonly speaker: string;
  readonly style: string | null;
  /** Text as written, Unicode NFC; null when the dataset gives none. */
  readonly text: string | null;
  /** Katakana as pronounced; `ー` long vowel, `、` or space where a phrase may pause; null when the dataset gives none. */
  readonly reading: string | null;
  /** The reading with accent marks as the dataset writes them: `[` rise, `]` fall, `#` phrase, `_` pause; null when unknown. */
  readonly accentReading: string | null;
  readonly audio: string | null;
  /** Part of the recording in s; null for the whole. */
  readonly audioStartSec: number | null;
  readonly audioEndSec: number | null;
  readonly labels: readonly LabelFile[];
  /** Where this utterance is listed. */
  readonly file: string;
  readonly line: number | null;
}

/** Something a person should know about one place in a dataset. */
export interface Problem {
  readonly dataset: string;
  /** Utterance concerned, null when it concerns the dataset. */
  readonly utterance: string | null;
  readonly file: string;
  readonly line: number | null;
  /** Stable short name, e.g. `label-times-overlap`; messages may change, this may not. */
  readonly rule: string;
  /** What is wrong: the value and the rule it breaks. */
  readonly message: string;
  /** What to do about it. */
  readonly wayOut: string;
  /** True when the utterance (or its label set) was left out because of it. */
  readonly excluded: boolean;
}
