import { tokenTableColumns } from "../measures/columns.ts";

/** Names, as they stand in the tables of a run. */
export const listenLabels = [
  ...(["labelSet", "phone", "kind", "length", "before", "after", "position", "word"] as const),
  ...(["devoicedBasis", "measureReason"] as const),
] as const;

export const listenFlags = [
  ...(["atFloor", "accented", "devoiced", "devoicedHeard"] as const),
  ...(["devoicedByClassifier", "devoicedByIsland"] as const),
] as const;

/** Measures with the decimal places that are kept: more than any of them is sure of. */
export const listenNumbers = {
  startMs: 1,
  endMs: 1,
  durationMs: 1,
  durationErrorMs: 1,
  confidence: 3,
  closureMs: 1,
  speechRateMoraePerSec: 2,
  devoicedProbability: 4,
  voicingLogOdds: 2,
  islandMs: 0,
  voicedMs: 1,
  voicedShare: 3,
  periodicity: 3,
  lowBandDb: 1,
  intensityDb: 1,
  f0Hz: 1,
  f0SlopeSemitonesPerSec: 1,
  f1Hz: 0,
  f2Hz: 0,
  f3Hz: 0,
  closurePartMs: 1,
  releasePartMs: 1,
  fricationMs: 1,
  fricationCentreHz: 0,
} as const satisfies Partial<Record<keyof typeof tokenTableColumns, number>>;

/** `place`: row of the list of utterances; `index`: row of the intervals; `mora`: of the utterance, from 0. */
export const listenCounts = ["place", "index", "mora"] as const;

export type ListenLabel = (typeof listenLabels)[number];
export type ListenFlag = (typeof listenFlags)[number];
export type ListenNumber = keyof typeof listenNumbers;
export type ListenCount = (typeof listenCounts)[number];

/** Unit and description of a measure, from the one table of columns. */
export function listenMeasure(name: ListenNumber): { readonly unit: string | null; readonly about: string } {
  const { unit, description } = tokenTableColumns[name];
  return { unit, about: description };
}

/** An utterance of the list. */
export interface ListenUtterance {
  readonly dataset: string;
  readonly utterance: string;
  readonly speaker: string;
  readonly text: string | null;
  /** Katakana; null where it does not fit the phones. */
  readonly reading: string | null;
  /** Address of its recording within the site; null where there is none to hear. */
  readonly clip: string | null;
}

export interface ListenDataset {
  readonly id: string;
  /** Vowels and consonants of the dataset over all its label sets, and those that can be looked at here. */
  readonly tokens: number;
  readonly shown: number;
  /** Why recordings are missing, in a sentence; null where every utterance of the list can be heard. */
  readonly silent: string | null;
}

/** What stands beside the table of tokens. */
export interface ListenList {
  readonly utterances: readonly ListenUtterance[];
  readonly datasets: readonly ListenDataset[];
}
