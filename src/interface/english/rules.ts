import type { Basis } from "../../basis.ts";
import type { Place } from "../../findings/rules/region.ts";
import type { Verdict } from "../../findings/rules/verdict.ts";

/** The page on rules of thumb. */
export const rules = {
  title: "Which rules of thumb hold?",
  lead: "What lessons say about Japanese sounds, held against these recordings and their labels. A verdict rests on a whole interval, never on a single number, and speaks of these recordings only.",

  /** What each verdict means. */
  meanings: {
    "borne out": "the whole interval lies where the rule says",
    "borne out in part": "so it does in some environments or for some speakers only; they are named",
    contradicted: "the whole interval lies where the rule does not hold",
    "too small to matter": "there is enough evidence, and what the rule claims is at most negligible",
    undecided: "there are enough sounds and speakers, but the interval allows both",
    "too little evidence": "there are fewer sounds or speakers than the rule asks for",
    "not measurable": "these recordings or their labels cannot speak about it",
  } as Readonly<Record<Verdict, string>>,
  /** Each verdict after a count: `9 borne out`. */
  counted: {
    "borne out": (n: number) => `${n} borne out`,
    "borne out in part": (n: number) => `${n} borne out in part`,
    contradicted: (n: number) => `${n} contradicted`,
    "too small to matter": (n: number) => `${n} too small to matter`,
    undecided: (n: number) => `${n} undecided`,
    "too little evidence": (n: number) => `${n} with too little evidence`,
    "not measurable": (n: number) => `${n} not measurable with these recordings`,
  } as Readonly<Record<Verdict, (n: number) => string>>,
  key: "Verdicts, how often each is given, and what it means",
  showOnly: (counted: string) => `${counted}: show only these`,
  filter: "Which rules to show",
  verdict: "Verdict",
  shown: (shown: number, all: number) => `${shown} of ${all} rules are shown.`,
  link: (rules: string) => `${rules}, held against these recordings.`,
  linkTo: "See each with its picture, its exceptions and its source",

  howToRead:
    "In each picture the band is where the rule holds and the line is the interval of what was found, with its estimate as a dot. An arrow means that the interval is open on that side: the aligner cannot mark anything shorter than its floor. Where a part of the band is hatched, the rule would hold, but by too little to matter.",
  asks: (what: string) => `Asks for: ${what}`,
  source: "Source",
  silent: "Not measurable here",
  silentSummary: (rules: string) => `${rules} that nothing here can judge, and what each would need`,
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
    "A rule of your own can be judged in the same way: write it in a JSON file and run `morascope rules RESULTS --rules mine.json`.",
  synthetic: "synthetic voices, no evidence about Japanese",
  noEnvironments: "Exceptions: no environment alone has enough sounds to look for exceptions.",
  noParts: "Exceptions: no environment and no speaker alone has enough sounds to look for exceptions.",
  noneCertain: (looked: string) => `Exceptions looked for in ${looked}: none is certain.`,
  lookedAlone: (looked: string) => `Looked at alone: ${looked}`,
  more: (n: number) => `${n} more are in \`rules.json\`.`,
  places: {
    holds: "holds",
    fails: "does not hold",
    small: "too small to matter",
    open: "allows both",
  } as Readonly<Record<Place, string>>,
  mind: (n: number) => `Mind ${n === 1 ? "one thing" : `${n} things`}`,
  basis: (basis: Basis) =>
    `basis: ${basis}, ${
      {
        measured: "measured from the audio",
        annotated: "marked by a person or by the maker of the speech",
        aligned: "times placed by an aligner",
        predicted: "predicted from text by a rule",
      }[basis]
    }`,
  noInterval: "no interval",
  /** The picture for those who cannot see it. */
  picture: (value: string, interval: string, asked: string, verdict: string) =>
    `${value}, ${interval}, against the rule’s ${asked}: ${verdict}.`,
  many: (level: string) =>
    `Each verdict rests on an interval of its own at ${level} %: read together, a few of many verdicts may be wrong by chance. Exceptions were looked for at a stricter level, so that all those named beside one verdict can be trusted together. Verdicts describe these recordings; they assess no person.`,
  units: {
    share: "share of the vowels that are devoiced",
    difference: "difference of two shares, in percentage points",
    ratio: "how many times as long, on a log scale",
    semitones: "semitones",
    hertz: "Hz",
    "vowel-separation": "share of vowels nearer to the centre of their own kind",
    "mora-count": "share of the variance of duration that morae explain",
    formant: "semitones above the limit",
    "length-quality": "semitones between long and short vowels",
    colouring: "centre of gravity before /i/ minus before /u/, Hz",
  } as Readonly<Record<string, string>>,
};
