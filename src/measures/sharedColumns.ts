import type { Columns } from "./column.ts";

/** Whose speech a row is about. */
export const identity = {
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

/** When. */
export const times = {
  startMs: {
    type: "DOUBLE",
    unit: "ms",
    description: "Start, from the start of the utterance’s recording or part of one",
    source: "label file or the project's aligner",
    missing: null,
  },
  endMs: {
    type: "DOUBLE",
    unit: "ms",
    description: "End, from the start of the utterance’s recording or part of one",
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
  confidence: {
    type: "DOUBLE",
    unit: "1",
    description: "Rough probability that both edges lie within 20 ms of the truth, 0 to 1",
    source: "spread of the aligner's posterior at both edges",
    missing: "the times come from a label file",
  },
} as const satisfies Columns;

/** What the sound is and what stands around it. */
export const environment = {
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
