const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

type Contrast = "vowel-length" | "gemination";

const words = {
  "vowel-length": { long: "long vowels", short: "short ones" },
  gemination: { long: "doubled consonants", short: "single ones" },
} as const;

const heads = (contrast: Contrast, alone: boolean) =>
  alone ? `In this one speaker, ${words[contrast].long}` : capital(words[contrast].long);

/** What ratios of durations say. Numbers come as text. */
export const ratioSentences = {
  times: (ratio: string, atLeast: boolean) => `${atLeast ? "at least " : ""}${ratio} times`,
  none: (contrast: Contrast, reason: string) =>
    `Of ${words[contrast].long} and ${words[contrast].short} no ratio can be given here. ${reason}`.trim(),
  /** `who`: how many speakers, null for a single one. */
  one: (
    contrast: Contrast,
    times: string,
    interval: string,
    who: string | null,
    long: string,
    short: string,
  ) =>
    `${heads(contrast, who === null)} last ${times} as long as ${words[contrast].short} (${interval}, ${
      who ?? "for this speaker only"
    }; ${long} against ${short}).`,
  tooFew: (contrast: Contrast, least: number) =>
    `Each of these rests on fewer than ${least} tokens of one side: too few to say how ${words[contrast].long} compare.`,
  of: (name: string, sentence: string) => `${name}: ${sentence}`,
  end: (name: string, times: string, interval: string) => `${times} (${name}; ${interval})`,
  span: (contrast: Contrast, alone: boolean, bottom: string, top: string) =>
    `${heads(contrast, alone)} last from ${bottom} to ${top} as long as ${words[contrast].short}.`,
  lowerBounds: " Some of these are lower bounds, so their order is not certain.",
  overlap: " Their intervals overlap: from these alone their order is not certain.",
  counted: (_contrast: Contrast, long: string, alone: boolean) =>
    `Counted on ${long}${alone ? ", and nothing follows about other speakers" : ""}.`,
  /** `share` of the short vowels of these names are devoiced; `ratios` against the others, `2.56 times (/i/; …)`. */
  voiced: (share: string, names: string, ratios: string) =>
    `Here ${share} of the short ${names} are whispered, which makes them shorter; against voiced ones alone it is ${ratios}.`,
  /** Where only cells are at hand, which do not tell how long the voiced ones are. */
  withDevoiced: (share: string, names: string) =>
    `Here ${share} of the short ${names} are whispered, which makes them shorter; they are counted too.`,
  how: {
    measured: "measured",
    annotated: "set by a person, or known because the speech was made",
    aligned: "placed by an aligner",
    predicted: "predicted",
  },
  counts: (contrast: Contrast, long: string, short: string, who: string, how: string) =>
    `${long} of ${words[contrast].long}, ${short} of ${words[contrast].short}, ${who}; boundaries ${how}.`,
  method: (method: string) => `Estimate and interval: ${method}.`,
  durations: (contrast: Contrast, long: string, short: string, atMost: boolean) =>
    `Geometric means: ${long} for ${words[contrast].long}, ${atMost ? "at most " : ""}${short} for ${words[contrast].short}.`,
  speakers: (who: string, from: string, to: string, atLeast: boolean, over: string) =>
    `${who} range from ${atLeast ? "at least " : ""}${from} to ${to} times${over}.`,
  overAll: (times: string, interval: string) => `; over all of them ${times} (${interval})`,

  question: {
    "vowel-length": "How much longer does a long vowel last?",
    gemination: "How much longer does a doubled consonant last?",
  },
  axis: "times as long",
  columns: {
    ratio: "ratio (geometric means)",
    low: "low",
    high: "high",
    longMean: "long, geometric mean (ms)",
    shortMean: "short, geometric mean (ms)",
    means: "ratio of means",
    medians: "ratio of medians",
    longs: "long tokens",
    shorts: "short tokens",
    bound: "bound",
    speakers: "speakers",
    basis: "basis",
    method: "method",
  },
};
