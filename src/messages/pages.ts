import { cite } from "../interface/english/cite.ts";
import { colouring } from "../interface/english/colouring.ts";
import { listen } from "../interface/english/listen.ts";
import { lookUp } from "../interface/english/lookUp.ts";
import { pages } from "../interface/english/pages.ts";
import { timing } from "../interface/english/timing.ts";
import { vowelSpace } from "../interface/english/vowelSpace.ts";
import { whatMatters } from "../interface/english/whatMatters.ts";
import { words } from "../interface/english/words.ts";

/** English wording of the published pages that stands whatever the data say. */

export const pageNames = {
  index: "Start",
  devoicing: "Devoicing",
  length: "Length",
  timing: pages.timing,
  "vowel-space": pages.vowels,
  colouring: pages.colouring,
  "what-matters": pages.whatMatters,
  listen: pages.listen,
  rules: "Rules",
  words: pages.words,
  "look-up": pages.lookUp,
  datasets: "Datasets",
  method: "Method",
  dictionary: "Dictionary",
  cite: pages.cite,
} as const;
export type PageFile = keyof typeof pageNames;

export const pageDescriptions: Readonly<Record<PageFile, string>> = {
  index:
    "What this corpus shows about whispered vowels, long vowels and doubled consonants, with its uncertainty.",
  devoicing:
    "How often vowels are devoiced, by the sounds around them, with intervals, recomputed for any cut.",
  length:
    "How much longer long vowels and doubled consonants last than short and single ones, with intervals.",
  timing: timing.description,
  "vowel-space": vowelSpace.description,
  colouring: colouring.description,
  "what-matters": whatMatters.description,
  listen: listen.description,
  rules:
    "Which rules of thumb about Japanese sounds the recordings bear out, each with its interval and its exceptions.",
  words: words.description,
  "look-up": lookUp.description,
  datasets: "The datasets behind these pages: licence, credits, labels, and what was left out and why.",
  method: "How each number came about, what it can show and what it cannot.",
  dictionary: "Every column of the results: meaning, unit, source and what a missing value means.",
  cite: cite.description,
};

export const careNotice =
  "These pages describe a corpus. They assess no speaker and no learner. Concerns about anyone’s hearing or speech belong with a licensed professional.";
