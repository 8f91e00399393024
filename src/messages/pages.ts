import type { DatasetCard, LabelSetCard } from "../datasets/types.ts";

/** English wording of the published pages that stands whatever the data say. */

export const pageNames = {
  index: "Start",
  devoicing: "Devoicing",
  length: "Length",
  datasets: "Datasets",
  method: "Method",
  dictionary: "Dictionary",
} as const;
export type PageFile = keyof typeof pageNames;

export const pageDescriptions: Readonly<Record<PageFile, string>> = {
  index:
    "What this corpus shows about whispered vowels, long vowels and doubled consonants, with its uncertainty.",
  devoicing:
    "How often vowels are devoiced, by the sounds around them, with intervals, recomputed for any cut.",
  length:
    "How much longer long vowels and doubled consonants last than short and single ones, with intervals.",
  datasets: "The datasets behind these pages: licence, credits, labels, and what was left out and why.",
  method: "How each number came about, what it can show and what it cannot.",
  dictionary: "Every column of the results: meaning, unit, source and what a missing value means.",
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
