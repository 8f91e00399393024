/** The page that lists all columns. */
export const dictionary = {
  title: "Dictionary",
  lead: "Every column of the results, as the program that wrote the files knows it.",
  about: {
    cells:
      "What these pages compute with: tokens that share speaker and surroundings, reduced to sums and counts.",
    tokens: "One row a vowel or consonant, with its surroundings and what its recording tells.",
    intervals: "One row a labelled stretch of time, pauses included.",
    utterances: "One row a recording with its transcript.",
  },
  columns: ["Column", "Meaning", "Unit", "How it is obtained", "When missing"] as readonly string[],
  /** For the unit 1. */
  number: "a plain number",
  never: "never missing",
};
