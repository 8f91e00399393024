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
    /** `difference`: as rates word it, null where it is not known; `between`: whether other rates lie between the two. */
    found: (most: string, least: string, difference: string | null, certain: boolean, between: boolean) =>
      `Among the voiceless surroundings with enough vowels, devoicing ${
        certain
          ? `is more frequent between ${most} than between ${least}${between ? ", the highest and the lowest here" : ""}`
          : `ranges from ${least} to ${most}`
      }${
        difference === null
          ? ". From these alone the order is not certain"
          : certain
            ? `, ${difference}`
            : `, ${difference}: that allows for no difference, so the order is not certain`
      }.`,
  },
};
