import type { Columns, Row } from "./column.ts";
import { environment, identity, times } from "./sharedColumns.ts";

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
    description:
      "How the devoicing mark came about: annotated, measured from the recording (in tokens), or predicted",
    source: "dataset card",
    missing: "no mark",
  },
} as const satisfies Columns;
export type IntervalRow = Row<typeof intervalColumns>;
