import type { Basis } from "../basis.ts";
import type { Verdict } from "../findings/rules/verdict.ts";

/** English wording of the page of rules that stands whatever the data say. */

/** What each verdict means, in the order in which rules are shown. */
export const verdictMeanings: Readonly<Record<Verdict, string>> = {
  "borne out": "the whole interval lies where the rule says",
  "borne out in part": "so it does in some environments or for some speakers only; they are named",
  contradicted: "the whole interval lies where the rule does not hold",
  "too small to matter": "there is enough evidence, and what the rule claims is at most negligible",
  undecided: "there are enough sounds and speakers, but the interval allows both",
  "too little evidence": "there are fewer sounds or speakers than the rule asks for",
  "not measurable": "these recordings or their labels cannot speak about it",
};

export const ruleWords = {
  howToRead:
    "In each picture the band is where the rule holds and the line is the interval of what was found, with its estimate as a dot. An arrow means that the interval is open on that side: the aligner cannot mark anything shorter than its floor. Where a part of the band is hatched, the rule would hold, but by too little to matter.",
  asks: "Asks for",
  silent: "Not measurable here",
  silentLead:
    "These rules ask for something that the recordings or their labels do not tell. What they would need:",
  noVerdicts:
    "These results were written before rules were judged in every run, so there is no verdict to show here.",
  noVerdictsWayOut: [
    "Run morascope run again on the dataset: the new results hold rules.json, and the report built from them fills this page.",
    "Or print the verdicts of these results right away with morascope rules RESULTS.",
  ],
  noRules: "These results hold no verdict on any rule.",
  ownRule:
    "A rule of your own can be judged in the same way: write it in a JSON file and run morascope rules RESULTS --rules mine.json.",
  synthetic: "synthetic voices, no evidence about Japanese",
  noEnvironments: "no environment alone has enough sounds to look for exceptions",
  noParts: "no environment and no speaker alone has enough sounds to look for exceptions",
} as const;

/** How what was counted came about. */
export const basisWords: Readonly<Record<Basis, string>> = {
  measured: "measured from the audio",
  annotated: "marked by a person or by the maker of the speech",
  aligned: "times placed by an aligner",
  predicted: "predicted from text by a rule",
};

/** Each verdict after a count: `9 borne out`. */
export const verdictCounted: Readonly<Record<Verdict, string>> = {
  "borne out": "borne out",
  "borne out in part": "borne out in part",
  contradicted: "contradicted",
  "too small to matter": "too small to matter",
  undecided: "undecided",
  "too little evidence": "with too little evidence",
  "not measurable": "not measurable with these recordings",
};
