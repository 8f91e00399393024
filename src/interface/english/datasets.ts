import type { Basis } from "../../basis.ts";
import { count } from "./figures.ts";

/** The page on datasets. */
export const datasets = {
  title: "Where the numbers come from",
  lead: "Every number on these pages belongs to one of these datasets and to one way of labelling it. Label sets of the same recordings are never added together.",

  basis: {
    measured: "measured from the audio",
    annotated: "marked by a person or by the maker of the speech",
    aligned: "placed by an aligner",
    predicted: "predicted from text by a rule, no evidence",
  } as Readonly<Record<Basis, string>>,
  grid: (ms: number) => `on a ${ms} ms grid`,
  floor: (ms: number) => `nothing shorter than ${ms} ms`,
  between: ", ",
  none: "none",
  noLength: "nothing tells long from short",
  lengthFrom: { label: "the label", reading: "the reading" },
  unknown: "unknown",
  noAudio: "none found",
  hours: (hours: string) => `${hours} hours`,
  allowed: {
    all: "Every recording may be published.",
    excerpt: (most: number) => `At most ${count(most)} recordings may be published.`,
    none: "No recording may be published.",
  },
  facts: {
    licence: "Licence",
    credits: "Credits",
    citation: "Citation",
    homePage: "Home page",
    publishing: "Publishing recordings",
    speakers: "Speakers",
    utterances: "Utterances",
    audio: "Audio",
    readings: "Readings",
    readAs: "Read as",
  },
  readings: (utterances: number) => `${count(utterances)} utterances`,
  version: (version: string) => `version ${version}`,
  labels: "Labels",
  columns: [
    "Label set",
    "Utterances",
    "Times",
    "Devoicing marks",
    "Long vowels told by",
    "Accent",
    "Source of these facts",
  ] as readonly string[],

  problems: {
    title: "Left out, and other remarks",
    none: "Nothing was left out and nothing needed a remark.",
    found: (total: number, excluded: number) =>
      `${total === 1 ? "One remark was made" : `${count(total)} remarks were made`}; ${
        excluded === 0
          ? "no recording was left out"
          : `${excluded === 1 ? "one recording was" : `${count(excluded)} recordings were`} left out because of them`
      }.`,
    first: (listed: number) => ` The first ${count(listed)} are shown here.`,
    line: (file: string, line: number) => `${file}, line ${line}`,
    leftOut: "left out",
    kept: "kept",
    columns: ["Dataset", "Utterance", "Where", "What", "Way out", "Effect"] as readonly string[],
    download: "Download the whole list (CSV)",
  },
};
