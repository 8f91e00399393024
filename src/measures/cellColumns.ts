import type { Column, Columns, Row } from "./column.ts";
import { intervalColumns } from "./intervalColumns.ts";
import { environment, identity, times } from "./sharedColumns.ts";

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
