import type { DatasetCard } from "../datasets/types.ts";

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

/** What a set of datasets cannot show, in whole sentences, the plainest first. */
export function limitsOf(cards: readonly DatasetCard[]): string[] {
  const limits: string[] = [];
  const synthetic = cards.filter((card) => card.synthetic).map(({ name }) => name);
  if (synthetic.length > 0)
    limits.push(
      `${synthetic.join(", ")}: the voice is made by a machine. Its numbers show how the pages work and nothing about Japanese.`,
    );
  for (const card of cards) {
    for (const { id, devoicingBasis, timeBasis, timeFloorMs } of card.labelSets) {
      const name = card.labelSets.length > 1 ? `${card.name} (${id})` : card.name;
      if (devoicingBasis === null)
        limits.push(`${name} does not mark which vowels are devoiced, so it says nothing about devoicing.`);
      if (devoicingBasis === "predicted")
        limits.push(
          `${name}: its devoicing marks come from a text rule, the same for every speaker. They are shown as “predicted by rule” and are no evidence.`,
        );
      if (timeBasis === "aligned" && timeFloorMs !== null && timeFloorMs >= 10)
        limits.push(
          `${name}: an aligner placed the boundaries, and nothing it marks is shorter than ${timeFloorMs} ms. Short vowels may be shorter than shown, so ratios are “at least”.`,
        );
    }
    if (card.speakers === 1)
      limits.push(`${card.name} has one speaker: its intervals speak of this voice only.`);
  }
  limits.push("Read sentences are not conversation: in talk, vowels are devoiced and shortened differently.");
  return limits;
}
