import type { DatasetCard, LabelSetCard } from "../datasets/types.ts";
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

/** One way of labelling a dataset, with the name it has on the pages. */
export interface NamedSet {
  readonly name: string;
  readonly card: DatasetCard;
  readonly labels: LabelSetCard;
}

/** What these sets cannot show, in whole sentences, each limit once with the sets it holds for. */
export function limitsOf(sets: readonly NamedSet[]): string[] {
  const names = (holds: (set: NamedSet) => boolean) =>
    sets
      .filter(holds)
      .map(({ name }) => name)
      .join("; ");
  const synthetic = names(({ card }) => card.synthetic);
  const unmarked = names(({ labels }) => labels.devoicingBasis === null);
  const ruled = names(({ labels }) => labels.devoicingBasis === "predicted");
  const floored = sets.filter(
    ({ labels }) => labels.timeBasis === "aligned" && (labels.timeFloorMs ?? 0) >= 10,
  );
  const alone = names(({ card }) => card.speakers === 1);
  const floors = floored.map(({ name, labels }) => `${name} (${labels.timeFloorMs} ms)`).join("; ");
  return [
    synthetic &&
      `Anything about Japanese, where the voice is made by a machine: ${synthetic}. Its numbers only show how the pages work.`,
    unmarked && `Devoicing, where the labels do not mark it: ${unmarked}.`,
    ruled &&
      `How often vowels really are devoiced, where a text rule wrote the marks, the same for every speaker: ${ruled}. They are shown as “predicted by rule”.`,
    floors &&
      `How short the shortest sounds are, where an aligner marks nothing shorter than a floor: ${floors}. Where short vowels stand at it, ratios are “at least”.`,
    alone && `Anything about other speakers, where one person speaks: ${alone}.`,
    "How people talk: sentences read aloud are not conversation, where vowels are devoiced and shortened differently.",
  ].filter((limit) => limit !== "");
}

/** Wording of the pictures that stands whatever the data say. */
export const figureWords = {
  nothing: "Nothing in this corpus matches the choice.",
  speakersDiffer: "How much do speakers differ?",
  oneSpeaker: "There is one speaker in this cut: nothing can be said about how speakers differ.",
  noTwoSpeakers:
    "There are not two speakers with both long and short sounds in this cut, so nothing can be said about how speakers differ.",
  noMarks: "No speaker’s vowels carry a devoicing mark here.",
  ruleSpeakers: "The rule is the same for every speaker, so it cannot show how they differ.",
  rateDots:
    "Each dot is a speaker, larger with more vowels; the band is the interval over all of them. Few vowels alone make dots scatter.",
  ratioDots:
    "Each dot is a speaker, compared with no one else; larger dots rest on more long sounds. The band is the interval over all of them.",
  gridRemark:
    "Choose a cell to narrow the other pictures to it. A dot means that the corpus has no such vowel.",
  ratioQuestion: {
    "vowel-length": "How much longer does a long vowel last?",
    gemination: "How much longer does a doubled consonant last?",
  },
  sides: {
    "vowel-length": { short: "short", long: "long" },
    gemination: { short: "single", long: "doubled" },
  },
  spread: "How do the durations spread?",
  noSpread: "No sound here occurs often enough both short and long to show how its durations spread.",
  spreadRemark:
    "Share of the tokens in steps of 10 ms, each curve for itself; the longest hundredth stands in the last step.",
} as const;

export function floorRemark(floorMs: number): string {
  return `Dotted line: ${floorMs} ms, the shortest duration the aligner can give. A sound that stands there lasted at most that long.`;
}
