import type { Column, Columns, Row } from "./column.ts";

const identity = {
  dataset: {
    type: "VARCHAR",
    unit: null,
    description: "Short name of the dataset",
    source: "dataset card",
    missing: null,
  },
  labelSet: {
    type: "VARCHAR",
    unit: null,
    description:
      "Which labelling of the recording this row comes from; label sets of the same recordings are never pooled",
    source: "dataset card",
    missing: null,
  },
  speaker: {
    type: "VARCHAR",
    unit: null,
    description: "Neutral speaker label, unique within the dataset",
    source: "dataset layout",
    missing: null,
  },
  utterance: {
    type: "VARCHAR",
    unit: null,
    description: "Utterance id, unique within the dataset",
    source: "dataset layout",
    missing: null,
  },
} as const satisfies Columns;

const times = {
  startMs: {
    type: "DOUBLE",
    unit: "ms",
    description: "Start, from the start of the recording",
    source: "label file",
    missing: null,
  },
  endMs: {
    type: "DOUBLE",
    unit: "ms",
    description: "End, from the start of the recording",
    source: "label file",
    missing: null,
  },
  timeBasis: {
    type: "VARCHAR",
    unit: null,
    description: "How the boundaries came about: annotated or aligned",
    source: "dataset card",
    missing: null,
  },
} as const satisfies Columns;

const environment = {
  phone: {
    type: "VARCHAR",
    unit: null,
    description: "Vowel a i u e o, or consonant; a geminate carries the consonant it doubles",
    source: "label file, normalised to one phone set",
    missing: null,
  },
  kind: {
    type: "VARCHAR",
    unit: null,
    description: "vowel or consonant",
    source: "phone table",
    missing: null,
  },
  length: {
    type: "VARCHAR",
    unit: null,
    description: "Vowels: short or long; consonants: single or geminate",
    source:
      "a long vowel is one that the reading writes with ー or a vowel sequence inside one morpheme, or that the label marks; see lengthFrom",
    missing:
      "nothing in the dataset tells whether these vowels are one long vowel or two, or a sound outside the contrast (ん, a closure before a pause)",
  },
  before: {
    type: "VARCHAR",
    unit: null,
    description: "Phone before (C1 of a vowel), or pause",
    source: "label file",
    missing: null,
  },
  after: {
    type: "VARCHAR",
    unit: null,
    description: "Phone after (C2 of a vowel; cl before a geminate), or pause",
    source: "label file",
    missing: null,
  },
  position: {
    type: "VARCHAR",
    unit: null,
    description: "Place of the mora in its stretch between pauses: initial, medial, final or only",
    source: "counted from the labels",
    missing: null,
  },
  accented: {
    type: "BOOLEAN",
    unit: null,
    description: "Whether the mora carries the accent nucleus (the last high mora before the fall)",
    source: "full-context label or accent marks in the reading",
    missing: "accent unknown",
  },
  devoiceableNeighbour: {
    type: "BOOLEAN",
    unit: null,
    description: "Whether the vowel of the mora before or after is also /i/ or /u/ between voiceless sounds",
    source: "counted from the labels",
    missing: "a consonant",
  },
} as const satisfies Columns;

/** One row an utterance that was read, whether or not its labels could be used. */
export const utteranceColumns = {
  dataset: identity.dataset,
  utterance: identity.utterance,
  speaker: identity.speaker,
  style: {
    type: "VARCHAR",
    unit: null,
    description: "Style or part of the dataset the utterance belongs to",
    source: "dataset layout",
    missing: "the dataset names none",
  },
  text: {
    type: "VARCHAR",
    unit: null,
    description: "Text as written",
    source: "transcript",
    missing: "the dataset gives no text",
  },
  reading: {
    type: "VARCHAR",
    unit: null,
    description: "Katakana as pronounced",
    source: "see readingFrom",
    missing: "no reading could be made",
  },
  readingFrom: {
    type: "VARCHAR",
    unit: null,
    description: "Where the reading comes from: dataset, or predicted from the text with the dictionary",
    source: "transcript or kuromoji",
    missing: "no reading",
  },
  audio: {
    type: "VARCHAR",
    unit: null,
    description: "Recording, relative to the dataset folder",
    source: "dataset layout",
    missing: "the dataset has no recording of it",
  },
  labelSets: {
    type: "INTEGER",
    unit: "1",
    description: "Label files that were used",
    source: "counted",
    missing: null,
  },
  readingFits: {
    type: "BOOLEAN",
    unit: null,
    description: "Whether the phones of every label file used are those of the reading",
    source: "phone by phone",
    missing: "no reading or no label",
  },
} as const satisfies Columns;
export type UtteranceRow = Row<typeof utteranceColumns>;

/** One row a phone as labelled, pauses included, after long vowels and geminates were joined. */
export const intervalColumns = {
  ...identity,
  index: {
    type: "INTEGER",
    unit: "1",
    description: "Place in the utterance, from 0",
    source: "counted",
    missing: null,
  },
  phone: {
    type: "VARCHAR",
    unit: null,
    description: "Phone in the project's phone set, or pause",
    source: "label file, normalised",
    missing: null,
  },
  length: environment.length,
  lengthFrom: {
    type: "VARCHAR",
    unit: null,
    description: "What told the length: reading or label",
    source: "joining rule",
    missing: "length unknown, or not a vowel",
  },
  mora: {
    type: "INTEGER",
    unit: "1",
    description: "First mora of this phone in the utterance, from 0",
    source: "counted",
    missing: "a pause",
  },
  ...times,
  closureEndMs: {
    type: "DOUBLE",
    unit: "ms",
    description: "End of the geminate's first part (cl), where the doubled consonant's own label starts",
    source: "label file",
    missing: "not a geminate",
  },
  devoiced: {
    type: "BOOLEAN",
    unit: null,
    description: "Devoicing mark of the label",
    source: "upper-case vowel in the label",
    missing: "the label set carries no devoicing marks, or not a vowel",
  },
  devoicedBasis: {
    type: "VARCHAR",
    unit: null,
    description: "How the devoicing mark came about: annotated or predicted",
    source: "dataset card",
    missing: "no mark",
  },
} as const satisfies Columns;
export type IntervalRow = Row<typeof intervalColumns>;

/** One row a vowel or consonant with its environment. */
export const tokenColumns = {
  ...identity,
  index: {
    type: "INTEGER",
    unit: "1",
    description: "Row of intervals.parquet within the utterance",
    source: "counted",
    missing: null,
  },
  ...environment,
  word: {
    type: "VARCHAR",
    unit: null,
    description: "Word the mora stands in, as written",
    source: "text, where its pronunciation equals the reading",
    missing: "word boundaries unknown",
  },
  ...times,
  durationMs: {
    type: "DOUBLE",
    unit: "ms",
    description: "Duration; of a geminate closure plus release",
    source: "end minus start",
    missing: null,
  },
  atFloor: {
    type: "BOOLEAN",
    unit: null,
    description:
      "Whether the duration is the shortest the aligner can give: the sound lasted at most that long, its true length is unknown",
    source: "durationMs ≤ the label set's floor",
    missing: null,
  },
  closureMs: {
    type: "DOUBLE",
    unit: "ms",
    description: "Geminates: duration of the first part",
    source: "label file",
    missing: "not a geminate",
  },
  phraseMorae: {
    type: "INTEGER",
    unit: "1",
    description: "Morae in the stretch between pauses",
    source: "counted",
    missing: null,
  },
  moraInPhrase: {
    type: "INTEGER",
    unit: "1",
    description: "Place of the mora in that stretch, from 1",
    source: "counted",
    missing: null,
  },
  speechRateMoraePerSec: {
    type: "DOUBLE",
    unit: "morae/s",
    description: "Morae of the stretch between pauses, by its duration",
    source: "counted",
    missing: "the stretch has no duration",
  },
  devoiced: intervalColumns.devoiced,
  devoicedBasis: intervalColumns.devoicedBasis,
} as const satisfies Columns;
export type TokenRow = Row<typeof tokenColumns>;

/** Columns that say in which cell a token falls, in the order of the cells' sort. */
export const cellDimensions = [
  "dataset",
  "labelSet",
  "speaker",
  "kind",
  "phone",
  "length",
  "before",
  "after",
  "position",
  "accented",
  "devoiceableNeighbour",
] as const;
export type CellDimension = (typeof cellDimensions)[number];

const count = (description: string): Column => ({
  type: "INTEGER",
  unit: "1",
  description,
  source: "counted from tokens",
  missing: null,
});

/** Tokens that share speaker and environment, reduced to sufficient statistics. */
export const cellColumns = {
  dataset: identity.dataset,
  labelSet: identity.labelSet,
  speaker: identity.speaker,
  ...environment,
  timeBasis: times.timeBasis,
  tokens: count("Tokens in the cell"),
  atFloor: count("Tokens whose duration stands at the aligner's floor"),
  marked: count("Tokens with a devoicing mark, voiced or devoiced"),
  devoiced: count("Tokens marked devoiced"),
  devoicedBasis: intervalColumns.devoicedBasis,
  sumMs: {
    type: "DOUBLE",
    unit: "ms",
    description: "Sum of durations",
    source: "sum over tokens",
    missing: null,
  },
  sumSquareMs: {
    type: "DOUBLE",
    unit: "ms²",
    description: "Sum of squared durations",
    source: "sum over tokens",
    missing: null,
  },
  sumLogMs: {
    type: "DOUBLE",
    unit: "ln ms",
    description: "Sum of natural logarithms of durations in ms",
    source: "sum over tokens",
    missing: null,
  },
  sumSquareLogMs: {
    type: "DOUBLE",
    unit: "(ln ms)²",
    description: "Sum of their squares",
    source: "sum over tokens",
    missing: null,
  },
  histogramMs: {
    type: "INTEGER[]",
    unit: "ms",
    description: "Durations rounded to whole ms, ascending, each once",
    source: "counted from tokens",
    missing: null,
  },
  histogramTokens: {
    type: "INTEGER[]",
    unit: "1",
    description: "Tokens at each of these durations",
    source: "counted from tokens",
    missing: null,
  },
} as const satisfies Columns;
export type CellRow = Row<typeof cellColumns>;
