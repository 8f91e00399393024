import { rateSentences } from "./rateSentences.ts";
import { ratioSentences } from "./ratioSentences.ts";

/** Sentences that are made of numbers: what is found, in words. */
export const sentences = {
  nothing: "Nothing in this corpus matches the choice.",
  /** A warning that holds for some rows only. */
  warningOf: (names: string, warning: string) => `${names}: ${warning}`,
  rates: rateSentences,
  ratios: ratioSentences,
  environments: {
    noMarks: "No vowel in this cut carries a devoicing mark.",
    byRule: "What the text rule expects, by the sounds around the vowel: predicted by rule, not heard.",
    tooWide: "Most cells rest on few vowels: their intervals are too wide to rank the surroundings.",
    between: (before: string, after: string, rate: string) => `${before} and ${after} (${rate})`,
    found: (most: string, least: string, certain: boolean) =>
      `Among the voiceless surroundings with enough vowels, devoicing is most frequent between ${most}, least between ${least}.${
        certain ? "" : " Their intervals overlap, so the order is not certain."
      }`,
  },
};
