import type { Scale } from "../../findings/rules/region.ts";
import type { RuleContrast } from "../../findings/rules/ruleSchema.ts";
import type { Verdict } from "../../findings/rules/verdict.ts";

/** What a verdict is about, with its numbers as text. `sides`: rates of the two cuts. */
export interface Claimed {
  readonly contrast: RuleContrast;
  readonly value: string;
  /** The value without its sign, and whether it has one. */
  readonly size: string;
  readonly negative: boolean;
  readonly bound: "at least" | "at most" | null;
  readonly sides: readonly [string, string];
  readonly detail: string | null;
}

/** What counts as holding; `small` is the limit of what would be too small to matter, null where none is named. */
export type Asked =
  | { readonly when: "between"; readonly range: string }
  | { readonly when: "about"; readonly value: string; readonly margin: string }
  | {
      readonly when: "more-than" | "less-than";
      readonly limit: string | null;
      readonly small: string | null;
    };

const directions = (scale: Scale) =>
  scale === "ratio"
    ? (["longer", "shorter"] as const)
    : scale === "hertz" || scale === "semitones"
      ? (["higher", "lower"] as const)
      : (["more", "less"] as const);

function named(names: readonly string[], most: number): string {
  if (names.length > most) return `${names.slice(0, most).join(", ")} and ${names.length - most} more`;
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

function what({ contrast, value, size, negative, bound, sides, detail }: Claimed): string {
  const about = bound === null ? "" : `${bound} `;
  switch (contrast.kind) {
    case "rate":
      return `${value} of ${contrast.of.called} are devoiced`;
    case "rate-difference":
      return `${sides[0]} of ${contrast.first.called} are devoiced and ${sides[1]} of ${contrast.second.called}, a difference of ${value}`;
    case "length-ratio":
      return contrast.of === "gemination"
        ? `doubled consonants last ${about}${value} as long as single ones`
        : `long vowels last ${about}${value} as long as short ones`;
    case "duration-ratio":
      return `${contrast.first.called} last ${about}${value} as long as ${contrast.second.called}`;
    case "formant":
      return `the ${contrast.formant === "f1Hz" ? "F1" : "F2"} of /${contrast.vowel}/ lies ${size} ${negative ? "below" : "above"} the limit (${contrast.limits.lowerVoices} Hz for lower voices, ${contrast.limits.higherVoices} Hz for higher ones)`;
    case "vowel-separation":
      return `${value} of the vowels of ${detail}, which of all pairs lie closest, are nearer to the centre of their own kind (half would be by chance)`;
    case "length-quality":
      return `${detail}, which of all differs most between long and short vowels, shifts by ${value}`;
    case "mora-count":
      return `the number of morae explains ${value} of the variance of ${contrast.of === "word" ? "word" : "phrase"} durations`;
    case "devoiced-mora":
      return `morae with a devoiced vowel last ${about}${value} as long as the same morae voiced`;
    case "colouring":
      return `the centre of gravity of ${detail} before ${contrast.vowels} /i/ minus before ${contrast.vowels} /u/ is ${value}${contrast.consonants.length > 1 ? ", the smallest of the differences that could be had" : ""}`;
  }
}

/** How a verdict on a rule of thumb is told. Numbers come as text, with their units. */
export const verdicts = {
  /** A number with the unit of its scale; `digits` as it is printed. */
  number: (digits: string, scale: Scale) =>
    `${digits}${{ ratio: " times", semitones: " semitones", hertz: " Hz", share: " %", difference: " points" }[scale]}`,
  range: (low: string, high: string, scale: Scale) => `${low} to ${verdicts.number(high, scale)}`,
  orMore: (value: string) => `${value} or more`,
  orLess: (value: string) => `${value} or less`,
  interval: (level: string, bounds: string, open: boolean) =>
    `${level} % interval${open ? ":" : ""} ${bounds}`,
  holds: (asked: Asked, scale: Scale): string => {
    if (asked.when === "between") return asked.range;
    if (asked.when === "about") return `about ${asked.value}, give or take ${asked.margin}`;
    const more = asked.when === "more-than";
    const direction =
      asked.limit === null
        ? directions(scale)[more ? 0 : 1]
        : `${more ? "more" : "less"} than ${asked.limit}`;
    return asked.small === null
      ? direction
      : `${direction} (${more ? "up" : "down"} to ${asked.small} would be too small to matter)`;
  },
  /** The whole sentence; `speakers` 1: this one speaker. */
  judged: (
    dataset: string,
    speakers: number,
    claimed: Claimed,
    interval: string,
    asked: string,
    tail: string,
  ) =>
    `${speakers === 1 ? `For this one speaker of ${dataset}` : `Over ${speakers} speakers of ${dataset}`}, ${what(claimed)} (${interval}); the rule asks for ${asked}${tail}.`,
  tails: {
    "borne out": ", and the whole interval meets that",
    contradicted: ", and the whole interval lies outside that",
    "too small to matter": ", and what there is is too small to matter",
    inPart: {
      holds: ". As a whole that is met, but with exceptions",
      fails: ". As a whole that is not met, but in part it is",
      small: ". As a whole what there is is too small to matter, but not everywhere",
      open: ". As a whole that is undecided, but part of it is certain",
    },
    openSide: ", which an interval open on that side cannot decide",
    both: ", and the interval allows both that it holds and that it does not",
  },
  places: (names: readonly string[], holds: boolean) =>
    `${holds ? "It holds" : "It does not hold"} ${named(names, 5)}.`,
  people: (names: readonly string[], judged: number, holds: boolean) =>
    `${holds ? "It holds" : "It does not hold"} for ${names.length} of the ${judged} speakers with enough sounds (${named(names, 5)}).`,
  nothingFollows: "Nothing follows about other speakers.",
  silent: (dataset: string, reason: string) => `${dataset} cannot speak about this: ${reason}.`,
  counted: { sounds: "sounds", morae: "morae", words: "words" } as Readonly<Record<string, string>>,
  nothing: (dataset: string, counted: string) =>
    `${dataset} has no ${counted} of the kind this rule speaks about, so that there is nothing to count.`,
  tooFew: (dataset: string, tokens: readonly number[], counted: string, least: number) =>
    `${dataset} has ${
      tokens.length > 1
        ? `${tokens.join(" and ")} ${counted} on the two sides, where at least ${least} on each are wanted`
        : `${tokens[0]} ${counted}, where at least ${least} are wanted`
    }; that is too few to say anything.`,
  tooFewSpeakers: (dataset: string, speakers: number, least: number) =>
    `${dataset} has ${speakers} speakers who show this, where at least ${least} are wanted to speak about speakers.`,

  /** A sound as it stands in an environment; `ipa` in slashes, or a pause or doubled consonant. */
  sounds: { pause: "a pause", cl: "a doubled consonant" } as Readonly<Record<string, string>>,
  part: (column: string, value: string, sound: string): string => {
    switch (column) {
      case "phone":
        return `for ${sound}`;
      case "before":
        return `after ${sound}`;
      case "after":
        return `before ${sound}`;
      case "position":
        return value === "only"
          ? "in stretches of one mora"
          : `in the ${value} mora${value === "medial" ? "e" : ""} of a stretch between pauses`;
      case "length":
        return `for ${value} sounds`;
      case "accented":
        return value === "true" ? "on the accent" : "off the accent";
      case "devoiceableNeighbour":
        return value === "true"
          ? "beside a vowel that could be devoiced too"
          : "with no such vowel beside it";
      default:
        return `for ${column} ${value}`;
    }
  },
  marks: {
    read: "the work or its abstract was read",
    "read, secondary": "read in a work that quotes it",
    computed: "worked out",
    memory: "cited from memory, not checked",
  } as Readonly<Record<string, string>>,
  example: (shows: string | null, sound: string, around: readonly [string, string], word: string | null) =>
    `${shows === null ? "" : `${shows} `}${sound} ${around.join(" and ")}${word === null ? "" : ` in ${word}`}`,
  probability: (value: string) => `probability ${value}`,
  timesMean: (value: string) => `${value} times the speaker’s mean`,

  names: {
    "borne out": "Borne out",
    "borne out in part": "Borne out in part",
    contradicted: "Contradicted",
    "too small to matter": "Too small to matter",
    undecided: "Undecided",
    "too little evidence": "Too little evidence",
    "not measurable": "Not measurable",
  } as Readonly<Record<Verdict, string>>,
  byOneSpeaker: (verdict: string) => `${verdict}, by this one speaker`,
};
