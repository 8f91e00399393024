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
