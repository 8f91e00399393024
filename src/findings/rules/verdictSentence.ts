import { regionOf, type Scale } from "./region.ts";
import type { Holds, Rule, RuleSource } from "./ruleSchema.ts";
import type { JudgedPart, RuleVerdict } from "./verdict.ts";

type Unsaid = Omit<RuleVerdict, "sentence">;

/** One or two sentences that say what a verdict rests on. Numbers as a teacher reads them; no p-values. */
export function verdictSentence(rule: Rule, verdict: Unsaid): string {
  const { dataset, speakers } = verdict;
  if (verdict.verdict === "not measurable") return `${dataset} cannot speak about this: ${verdict.reason}.`;
  if (!("holds" in rule)) return "";
  if (verdict.verdict === "too little evidence") return tooLittle(rule, verdict);
  const who =
    speakers === 1 ? `For this one speaker of ${dataset}` : `Over ${speakers} speakers of ${dataset}`;
  const asked = `the rule asks for ${holdsText(rule.holds, verdict.scale!)}`;
  return [
    `${who}, ${whatText(rule, verdict)} (${intervalText(verdict)}); ${asked}${tailOf(verdict)}.`,
    ...exceptionsText(verdict),
    ...(speakers === 1 ? ["Nothing follows about other speakers."] : []),
  ].join(" ");
}

const inPart = {
  holds: ". As a whole that is met, but with exceptions",
  fails: ". As a whole that is not met, but in part it is",
  small: ". As a whole what there is is too small to matter, but not everywhere",
};

function tailOf({ verdict, place, low, high }: Unsaid): string {
  if (verdict === "borne out") return ", and the whole interval meets that";
  if (verdict === "contradicted") return ", and the whole interval lies outside that";
  if (verdict === "too small to matter") return ", and what there is is too small to matter";
  if (verdict === "borne out in part" && place !== "open") return inPart[place!];
  if (verdict === "borne out in part") return ". As a whole that is undecided, but part of it is certain";
  return low === null || high === null
    ? ", which an interval open on that side cannot decide"
    : ", and the interval allows both that it holds and that it does not";
}

function exceptionsText({ verdict, environments, bySpeaker }: Unsaid): string[] {
  const said: string[] = [];
  const groups = [
    ["failing", "It does not hold", "It does not hold for"] as const,
    ["holding", "It holds", "It holds for"] as const,
  ];
  for (const [which, start, forPeople] of groups) {
    if (which === "holding" && verdict === "borne out") continue;
    const places = environments?.[which] ?? [];
    if (places.length > 0) said.push(`${start} ${named(places.map(partText), 5)}.`);
    const people = bySpeaker?.[which] ?? [];
    if (people.length > 0)
      said.push(
        `${forPeople} ${people.length} of the ${bySpeaker!.judged} speakers with enough sounds (${named(
          people.map(({ value }) => value),
          5,
        )}).`,
      );
  }
  return said;
}

/** What a verdict counts: "sounds", "words", "morae". */
export function countedAs({ kind, detail }: Pick<RuleVerdict, "kind" | "detail">): string {
  if (kind === "devoiced-mora") return "morae";
  return kind === "mora-count" && detail !== null ? detail : "sounds";
}

function tooLittle(rule: Extract<Rule, { holds: unknown }>, verdict: Unsaid): string {
  const { dataset, tokens, speakers } = verdict;
  const { least } = rule;
  const counted = countedAs(verdict);
  const fewest = Math.min(...tokens);
  const sounds =
    tokens.length > 1
      ? `${tokens.join(" and ")} ${counted} on the two sides, where at least ${least.tokens} on each are wanted`
      : `${fewest} ${counted}, where at least ${least.tokens} are wanted`;
  if (fewest < least.tokens) return `${dataset} has ${sounds}; that is too few to say anything.`;
  return `${dataset} has ${speakers} speakers who show this, where at least ${least.speakers} are wanted to speak about speakers.`;
}

function whatText(
  rule: Extract<Rule, { holds: unknown }>,
  { estimate, bound, sides, scale, detail }: Unsaid,
): string {
  const { contrast } = rule;
  const about = bound === null ? "" : `${bound} `;
  const value = numberText(estimate!, scale!);
  const rate = (side: number) => numberText(sides[side] ?? 0, "share");
  switch (contrast.kind) {
    case "rate":
      return `${value} of ${contrast.of.called} are devoiced`;
    case "rate-difference":
      return `${rate(0)} of ${contrast.first.called} are devoiced and ${rate(1)} of ${contrast.second.called}, a difference of ${value}`;
    case "length-ratio":
      return contrast.of === "gemination"
        ? `doubled consonants last ${about}${value} as long as single ones`
        : `long vowels last ${about}${value} as long as short ones`;
    case "duration-ratio":
      return `${contrast.first.called} last ${about}${value} as long as ${contrast.second.called}`;
    case "formant":
      return `the ${contrast.formant === "f1Hz" ? "F1" : "F2"} of /${contrast.vowel}/ lies ${numberText(Math.abs(estimate!), scale!)} ${estimate! < 0 ? "below" : "above"} the limit (${contrast.limits.lowerVoices} Hz for lower voices, ${contrast.limits.higherVoices} Hz for higher ones)`;
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

type Judged = Pick<RuleVerdict, "low" | "high" | "scale">;

/** A judged interval with its level: "95 % interval 76.8 to 92.0 %", "95 % interval: 1.86 times or more". */
export function intervalText({ level, ...judged }: Judged & Pick<RuleVerdict, "level">): string {
  const open = judged.high === null || isOpenBelow(judged);
  return `${Number((100 * level).toFixed(2))} % interval${open ? ":" : ""} ${boundsText(judged)}`;
}

/** The bounds alone: "76.8 to 92.0 %", "1.86 times or more" where the other side is open. */
export function boundsText(judged: Judged): string {
  const { low, high } = judged;
  const scale = judged.scale!;
  if (high === null) return `${numberText(low!, scale)} or more`;
  return isOpenBelow(judged) ? `${numberText(high, scale)} or less` : rangeText(low!, high, scale);
}

function isOpenBelow({ low, scale }: Judged): boolean {
  return low === null || (low === 0 && scale === "ratio");
}

/** What counts as holding, in words. */
export function holdsText(holds: Holds, scale: Scale): string {
  const say = (value: number) => numberText(value, scale);
  if (holds.when === "between") return rangeText(holds.from, holds.to, scale);
  if (holds.when === "about")
    return `about ${say(holds.value)}, give or take ${scale === "ratio" ? `${Math.round(100 * holds.margin)} %` : say(holds.margin)}`;
  const more = holds.when === "more-than";
  const none = scale === "ratio" ? 1 : 0;
  const [longer, shorter] =
    scale === "ratio"
      ? ["longer", "shorter"]
      : scale === "hertz" || scale === "semitones"
        ? ["higher", "lower"]
        : ["more", "less"];
  const limit = `${more ? "more" : "less"} than ${say(holds.value)}`;
  const direction = holds.value === none && scale !== "share" ? (more ? longer : shorter) : limit;
  if (holds.negligible === undefined) return direction!;
  const { smallLow, smallHigh } = regionOf(holds, scale);
  const small = more ? `up to ${say(smallHigh)}` : `down to ${say(smallLow)}`;
  return `${direction} (${small} would be too small to matter)`;
}

/** `0.923` as a share is "92.3 %", as a difference "+92.3 points", as a ratio "0.92 times". */
export function numberText(value: number, scale: Scale): string {
  if (scale === "ratio") return `${value.toFixed(2)} times`;
  if (scale === "semitones") return `${value.toFixed(2)} semitones`;
  if (scale === "hertz") return `${value.toFixed(0)} Hz`;
  const hundred = (100 * value).toFixed(1);
  return scale === "share" ? `${hundred} %` : `${hundred} points`;
}

/** "2.15 to 2.80 times": the unit once. */
function rangeText(low: number, high: number, scale: Scale): string {
  return `${numberText(low, scale).split(" ")[0]} to ${numberText(high, scale)}`;
}

/** An environment in words: "before /h/", "at the end of a stretch between pauses". */
export function partText({ column, value }: Pick<JudgedPart, "column" | "value">): string {
  const sound = value === "pause" ? "a pause" : value === "cl" ? "a doubled consonant" : `/${value}/`;
  const yes = value === "true";
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
      return yes ? "on the accent" : "off the accent";
    case "devoiceableNeighbour":
      return yes ? "beside a vowel that could be devoiced too" : "with no such vowel beside it";
    default:
      return `for ${column} ${value}`;
  }
}

function named(names: readonly string[], most: number): string {
  if (names.length > most) return `${names.slice(0, most).join(", ")} and ${names.length - most} more`;
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

const markTexts = {
  read: "the work or its abstract was read",
  "read, secondary": "read in a work that quotes it",
  computed: "worked out",
  memory: "cited from memory, not checked",
} as const;

export function sourceSentence(source: RuleSource): string {
  return typeof source === "string" ? source : `${source.citation} (${markTexts[source.mark]})`;
}
