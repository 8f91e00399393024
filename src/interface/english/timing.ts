import { count, figures } from "./figures.ts";

/** The page on timing. */
export const timing = {
  title: "Does every mora take the same time?",
  description:
    "How word duration grows with the number of morae, what a whispered vowel’s mora keeps of its time, and rhythm measures by speaker.",
  lead: "A mora is a beat of Japanese: か is one, かん and かっ are two. Lessons say that all beats last the same. Here is how far duration follows the number of beats, and what becomes of a beat whose vowel is whispered.",
  choices: "What to look at",
  unit: "Durations of",
  units: { word: "words", phrase: "stretches between pauses" },
  one: { word: "word", phrase: "stretch" },
  morae: "morae",
  duration: "duration (ms)",

  growth: {
    heading: "Duration and number of morae",
    question: {
      word: "How much longer is a word with each mora?",
      phrase: "How much longer is a stretch with each mora?",
    },
    finding: (unit: "word" | "phrase", step: string, interval: string, who: string, share: string) =>
      `Each further mora adds ${step} to a ${timing.one[unit]} (${interval}; ${who}). The number of morae explains ${share} of how long a speaker’s ${timing.units[unit]} last.`,
    alone: (unit: "word" | "phrase", step: string, share: string) =>
      `With this one speaker, each further mora adds ${step} to a ${timing.one[unit]}. The number of morae explains ${share} of how long the ${timing.units[unit]} last; nothing follows about other speakers.`,
    counts: (n: number, unit: "word" | "phrase", who: string, times: string) =>
      `${count(n)} ${timing.units[unit]}, ${who}; ${times}.`,
    left: (ms: string) => `What the line leaves: single durations lie ${ms} about it (standard deviation).`,
    remark:
      "Dot: median; thick and thin line: the middle half and the middle four fifths. Faint dots are some single durations. Faint lines are single speakers, the strong one is their mean.",
    few: (least: number) => `Numbers of morae with fewer than ${least} durations are only in the table.`,
    method:
      "One straight line a speaker by least squares; the step is the mean of the speakers’ slopes with a t interval over speakers. R² is the share of the variance of a speaker’s durations that the line explains.",
    columns: { morae: "morae", n: "durations", speakers: "speakers", line: "line (ms)" },
    quantile: (percent: number) => `${percent} % last at most (ms)`,
  },

  steps: {
    question: "How much do speakers differ?",
    finding: (n: number, low: string, high: string) =>
      `A mora adds from ${low} to ${high} ms, by speaker (${count(n)} speakers).`,
    remark:
      "Each dot is a speaker, larger with more durations; the band is the interval over all of them. Who speaks faster has a smaller step.",
    none: "There are not two speakers whose durations give a line, so nothing can be said about how speakers differ.",
    axis: "added by each mora (ms)",
    columns: {
      speaker: "speaker",
      step: "ms per mora",
      start: "line at no mora (ms)",
      share: "R²",
      n: "durations",
    },
  },

  twins: {
    heading: "A whispered vowel’s mora",
    question: "Does a mora keep its time when its vowel is whispered?",
    finding: (ratio: string, interval: string, who: string, verdict: "shorter" | "longer" | "open") =>
      `A mora with a whispered vowel lasts ${ratio} times as long as the same mora voiced (${interval}; ${who}). ${
        {
          shorter: "It is shorter, though it keeps most of its time.",
          longer: "It is longer.",
          open: "This corpus does not tell the two apart.",
        }[verdict]
      }`,
    muchShorter: (ratio: string, interval: string, who: string) =>
      `A mora with a whispered vowel lasts only ${ratio} times as long as the same mora voiced (${interval}; ${who}).`,
    counts: (devoiced: number, voiced: number, morae: number, who: string, how: string) =>
      `${count(devoiced)} whispered and ${count(voiced)} voiced tokens of ${count(morae)} morae, ${who}; ${how}.`,
    remark:
      "Filled: voiced, hollow: whispered; geometric means of consonant and vowel together, each speaker’s mora against the same speaker’s.",
    most: (n: number) => `The ${n} morae with most pairs are drawn; the table has all.`,
    method:
      "Ratio of geometric means, compared only within a speaker and a mora and weighted by their number; interval clustered by speaker on the log scale (t), never narrower than for independent tokens.",
    axis: "consonant + vowel (ms)",
    voiced: "voiced",
    devoiced: "whispered",
    all: "all together",
    columns: {
      mora: "mora",
      ratio: "whispered ÷ voiced",
      low: "low",
      high: "high",
      devoicedMs: "whispered (ms)",
      voicedMs: "voiced (ms)",
      devoiced: "whispered tokens",
      voiced: "voiced tokens",
      speakers: "speakers",
    },
  },

  rhythm: {
    heading: "Rhythm",
    question: "Which rhythm do the usual measures show?",
    finding: (parts: readonly string[]) => `Means over speakers: ${parts.join("; ")}.`,
    alone: (parts: readonly string[]) =>
      `With this one speaker: ${parts.join("; ")}. Nothing follows about other speakers.`,
    part: (name: string, value: string, interval: string) => `${name} ${value} (${interval})`,
    measures: {
      vowelPercent: {
        name: "%V",
        axis: "share of the time that is vowel (%)",
        plain:
          "How much of the time between pauses is vowel. A language of simple syllables such as か, た has much; one with clusters such as “strengths” has little.",
      },
      deltaConsonantMs: {
        name: "ΔC",
        axis: "spread of consonant stretches (ms)",
        plain:
          "How much stretches of consonants differ in length. Small where every syllable has one consonant; it also grows when someone speaks slowly.",
      },
      vowelNpvi: {
        name: "nPVI",
        axis: "change to the next vowel stretch (%)",
        plain:
          "How much a vowel stretch differs from the next one, relative to their length. Long beside short vowels, and whispered ones, raise it.",
      },
    },
    remark: "Dots: speakers. Band: interval of their mean. Triangles: published values, from other texts.",
    counts: (who: string, times: string) => `${who}; ${times}.`,
    method:
      "Each speaker’s value is the mean over stretches between pauses, weighted by their duration; over speakers a mean with t interval, each counting the same. Ramus, Nespor & Mehler (1999) Cognition 73:265–292; Grabe & Low (2002) Laboratory Phonology 7:515–546.",
    columns: { speaker: "speaker", vowel: "ΔV (ms)", raw: "rPVI of consonants (ms)" },
    mean: "mean",
    low: "low",
    high: "high",
    published: (language: string, work: string) => `${language}, ${work}`,
  },
  noneOf: figures.noAnswers,
};
