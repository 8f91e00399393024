import type { Columns, Row } from "./column.ts";
import { intervalColumns } from "./intervalColumns.ts";
import { environment, identity, times } from "./sharedColumns.ts";

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
  devoicedByAligner: {
    type: "BOOLEAN",
    unit: null,
    description:
      "Whether the aligner's variant without voice fitted the vowel better; for comparison only, it is no evidence of devoicing",
    source: "the likelier path; on real speech it swings with the start of training",
    missing: "not a vowel, or the times come from a label file",
  },
  devoiced: intervalColumns.devoiced,
  devoicedBasis: intervalColumns.devoicedBasis,
} as const satisfies Columns;
export type TokenRow = Row<typeof tokenColumns>;
