import { count } from "./figures.ts";

/** What the page on devoicing has beyond rates and environments. */
export const devoicing = {
  title: "Which vowels are whispered, and where?",
  lead: "A devoiced vowel keeps its place and its time but loses its voice: the す of です, the き of きた. Choose the vowel and the sounds around it; every number below is counted again at once, with its interval.",
  choices: "What to count",

  corrected: {
    shown:
      "Filled: as the decision counts. Hollow: corrected for how often it errs on the vowels a person marked, with that uncertainty in the interval.",
    overAll: (rate: string, interval: string) =>
      `Corrected for how often the decision errs, the rate over all of them is ${rate} (${interval}).`,
    inTable:
      "Cells are as counted; choose a cell, or see the numbers, for the rates corrected for the decision’s errors.",
    unknown:
      "How often the measured decision errs is not known for these results, so that rates are shown as counted.",
    markSome:
      "To see corrected rates, mark a blind sample by ear (`morascope sample`) and give it to `morascope run --marks`.",
    notBetterThanChance:
      "On so few marked vowels the decision is not surely better than chance, so that nothing can be corrected.",
  },

  /** Intervals that allow for words beside speakers. */
  byWord: {
    told: (parts: readonly string[]) =>
      `Vowels of one word may be alike, as those of one speaker are. With words allowed for too, the interval is ${parts.join("; ")}.`,
    part: (name: string, interval: string, words: number) =>
      `${interval} for ${name} (${words === 1 ? "one word" : `${count(words)} words`})`,
    wider: (points: string) =>
      `Vowels of one word may be alike, as those of one speaker are. Intervals that allow for words too stand under “Numbers”; they are up to ${points} ${points === "1" ? "point" : "points"} wider.`,
    noWider:
      "Vowels of one word may be alike, as those of one speaker are. Intervals that allow for words too stand under “Numbers”; they are no wider.",
    unknown:
      "The intervals allow for speakers, not for words: this corpus does not say which word each of these vowels stands in.",
    notCarried:
      "The intervals allow for speakers, not for words: the vowels are too many for a page to carry their words. The command under “Numbers” prints intervals by word too, up to 400,000 sounds.",
    noTokens:
      "The intervals allow for speakers, not for words: these results hold no single vowels, only their sums.",
  },
  compare: {
    heading: "Two cuts side by side",
    lead: "The first cut is the one chosen above. Choose the second one here.",
    form: "The second cut",
    question: "How do two cuts differ?",
    first: "first",
    second: "second",
    finding: (
      first: string,
      second: string,
      difference: string,
      interval: string,
      verdict: "more" | "less" | "open",
    ) => {
      const text = `${first} in the first cut against ${second} in the second: ${difference} points (${interval}).`;
      return verdict === "open"
        ? `${text} This corpus does not tell the two apart.`
        : `${text} Devoicing is ${verdict === "more" ? "more" : "less"} frequent in the first.`;
    },
    same: "Both cuts are the same: choose another second one.",
    none: "One of the two cuts holds no vowel with a mark, so that there is nothing to compare.",
    rule: "These marks were written by a text rule: they are no evidence, and no difference is given.",
    cut: (name: string, text: string) => `${name}: ${text}.`,
    between: "; ",
    field: (label: string, value: string) => `${label.toLowerCase()}: ${value}`,
    rates: "devoiced (% of vowels)",
    difference: "first minus second (points)",
    row: "difference",
    shared: (n: number) => `${count(n)} vowels are in both cuts, which draws the difference towards none.`,
    tokens: (n: number) => `${count(n)} vowels`,
    counts: (first: number, second: number, who: string, marks: string) =>
      `${count(first)} and ${count(second)} vowels, ${who}; ${marks}.`,
    columns: { what: "cut", rate: "rate or difference (%)", low: "low", high: "high", n: "vowels" },
  },

  sweep: {
    heading: "How much hangs on the cut-off?",
    question: "What if the decision were stricter, or laxer?",
    finding: (
      rate: string,
      interval: string,
      low: string,
      high: string,
      verdict: "hardly" | "some" | "much",
    ) =>
      `At the usual cut-off of 0.5 the rate is ${rate} (${interval}). From a lax 0.2 to a strict 0.8 it goes from ${low} to ${high}: ${
        {
          hardly: "hardly anything hangs on the cut-off.",
          some: "the cut-off matters a little.",
          much: "the cut-off matters, so that the rate should be read with care.",
        }[verdict]
      }`,
    none: "No vowel of this cut has a stated probability of being devoiced. It needs recordings; labels alone have none.",
    long: "Probabilities are kept for short vowels after voiceless consonants, which this cut does not hold.",
    waiting: "Loading the probabilities of single vowels.",
    axisX: "called devoiced from this probability on",
    axisY: "devoiced (% of vowels)",
    usual: "usual",
    counts: (n: number, who: string) => `${count(n)} vowels, ${who}; probability measured from the audio.`,
    remark:
      "Line: the rate at each cut-off; band: its interval, clustered by speaker. Short vowels after voiceless consonants, measured from the sound whatever the labels say; accent is not looked at.",
    columns: { cutOff: "cut-off", rate: "rate", low: "low", high: "high", devoiced: "devoiced", n: "vowels" },
  },
};
