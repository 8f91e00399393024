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
