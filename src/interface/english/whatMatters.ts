import { count } from "./figures.ts";

const yesNo = (yes: string, no: string) => ({ true: yes, false: no });

/** The page on regression models. */
export const whatMatters = {
  title: "What matters, when all is weighed together?",
  description:
    "What decides devoicing and vowel duration with everything else held equal: odds ratios, percentage points, and how much lies in speakers and words.",
  lead: "Vowel, neighbouring sounds, accent and speech rate go together in real speech. A regression sets them against one another: each line below is what one of them does while the others stay the same.",
  choices: "What to look at",
  outcome: "What is explained",
  outcomes: { devoicing: "devoicing", duration: "vowel duration" },
  scale: "Shown as",
  scales: { points: "percentage points", ratio: "odds ratios" },

  /** Terms of the models and their levels, as the pictures name them. */
  terms: {
    vowel: "vowel",
    before: "before",
    after: "after",
    accented: "accent",
    position: "place",
    devoiceableNeighbour: "neighbour",
    speechRate: "speech rate",
    wordFrequency: "word frequency",
    length: "length",
    devoiced: "voice",
  } as Readonly<Record<string, string>>,
  levels: {
    accented: yesNo("accented", "not accented"),
    devoiceableNeighbour: yesNo("beside another such vowel", "alone"),
    devoiced: yesNo("whispered", "voiced"),
    position: { initial: "first mora after a pause", later: "later" },
    after: { geminate: "doubled consonant", pause: "pause", "h-row": "h-row" },
    before: {},
  } as Readonly<Record<string, Readonly<Record<string, string>>>>,
  row: (term: string, level: string) => `${term}: ${level}`,
  perUnit: (term: string, unit: string) => `${term}: ${unit} more`,
  units: { "mora/s": "1 mora/s", tenfold: "ten times" } as Readonly<Record<string, string>>,
  against: (level: string) => `against ${level}`,

  effects: {
    question: {
      devoicing: "What makes devoicing more or less frequent, all else equal?",
      duration: "What makes a vowel longer or shorter, all else equal?",
    },
    finding: {
      devoicing: (parts: readonly string[]) =>
        `With all else equal, the surest ${parts.length === 1 ? "effect" : "effects"} on how often a vowel is devoiced: ${parts.join("; ")}.`,
      duration: (parts: readonly string[]) =>
        `With all else equal, the surest ${parts.length === 1 ? "effect" : "effects"} on how long a vowel lasts: ${parts.join("; ")}.`,
    },
    points: (name: string, against: string | null, points: string, interval: string) =>
      `“${name}”${against === null ? "" : ` (${against})`} ${points} points (${interval})`,
    times: (name: string, against: string | null, times: string, interval: string) =>
      `“${name}”${against === null ? "" : ` (${against})`} × ${times} (${interval})`,
    none: "No effect is certain here once all are looked at together: every interval that allows for differences between speakers and words holds “no effect”, or too many effects were tried.",
    counts: (n: number, what: string, who: string, words: number | null, marks: string) =>
      `${count(n)} vowels (${what}), ${who}${words === null ? "" : `, ${count(words)} words`}; ${marks}.`,
    average: {
      devoicing: (share: string) => `${share} of them are devoiced.`,
      duration: (ms: string) => `Their geometric mean is ${ms}.`,
    },
    axis: {
      points: "change of the rate (percentage points)",
      ratio: "odds ratio of devoicing (logarithmic)",
      duration: "times as long (logarithmic)",
    },
    remark:
      "Filled: one regression with errors clustered by speaker and word. Hollow: random intercepts for speaker and word. Where they differ, go by the wider interval.",
    thin: (names: readonly string[]) =>
      `Too few vowels, speakers or vowels of one outcome to tell: ${names.join(", ")}. No number is given for these.`,
    separated: (name: string, devoiced: number, n: number) =>
      `${name}: ${devoiced === 0 ? "none" : "all"} of ${count(n)} vowels ${n === 1 ? "is" : "are"} devoiced, so no odds ratio can be given; set aside.`,
    models: { clustered: "Clustered regression", mixed: "Mixed model" },
    converged: (model: string) => `${model}: the fit converged.`,
    failed: {
      "not converged": (model: string, reason: string) =>
        `${model}: the fit did not converge, and shows nothing. ${reason}`,
      "cannot be estimated": (model: string, reason: string) => `${model}: cannot be estimated. ${reason}`,
    },
    tokens: (n: number) => `${count(n)} vowels`,
    tooFew: (n: number) => `${count(n)}: too few to tell`,
    method: (parts: readonly string[]) => parts.join(" "),
    columns: {
      model: "model",
      term: "term",
      level: "level",
      against: "against",
      ratio: { devoicing: "odds ratio", duration: "times as long" },
      low: "low",
      high: "high",
      points: "percentage points",
      pointsLow: "points low",
      pointsHigh: "points high",
      p: "p, adjusted (Benjamini–Hochberg)",
      n: "vowels",
      devoiced: "devoiced",
      speakers: "speakers",
      thin: "thin",
    },
    few: "few",
  },

  variance: {
    question: "How much lies in speakers and in words?",
    finding: (parts: readonly string[]) => `Of the variation that these terms leave, ${parts.join(", ")}.`,
    between: (share: string, groups: number, of: string) => `${share} lies between ${count(groups)} ${of}s`,
    single: (share: string) => `${share} in the single vowel`,
    none: "The mixed model gives no shares here.",
    remark:
      "On the scale of the model (log odds, or log duration). A share between speakers means that some devoice, or lengthen, more than others whatever the surroundings; the shares have no interval.",
    names: {
      speaker: "speakers",
      word: "words",
      "sound frame": "sound frames",
      "single vowel": "single vowel",
    } as Readonly<Record<string, string>>,
    columns: { of: "between", groups: "groups", sd: "standard deviation", share: "share" },
  },
};
