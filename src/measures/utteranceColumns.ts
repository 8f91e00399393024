import type { Columns, Row } from "./column.ts";
import { identity } from "./sharedColumns.ts";

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
  audioStartSec: {
    type: "DOUBLE",
    unit: "s",
    description: "Where the utterance starts in its recording; times of tokens and intervals count from here",
    source: "dataset layout",
    missing: "the utterance is the whole recording, or there is none",
  },
  audioEndSec: {
    type: "DOUBLE",
    unit: "s",
    description: "Where the utterance ends in its recording",
    source: "dataset layout",
    missing: "the utterance lasts to the end of the recording, or there is none",
  },
  audioSec: {
    type: "DOUBLE",
    unit: "s",
    description: "Length of the recording, or of the part of it that holds the utterance",
    source: "decoded samples",
    missing: "no recording, or it could not be read",
  },
  audioRateHz: {
    type: "INTEGER",
    unit: "Hz",
    description: "Sample rate of the recording; it is aligned and measured at 16,000",
    source: "header",
    missing: "no recording, or it could not be read",
  },
  audioChannel: {
    type: "VARCHAR",
    unit: null,
    description: "How one channel was made of the recording's: mono, the average, or the louder of two",
    source: "number and level of the channels",
    missing: "no recording, or it could not be read",
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
