import { isPhone, phoneTable } from "../../phonology/phones.ts";
import { type Candidate, confounds } from "./candidate.ts";
import { type Chance, type DevoicingTable, leastAlike } from "./devoicingTable.ts";
import type { LengthRatio } from "./lengthEvidence.ts";

const percent = (share: number) => `${Math.round(100 * share)} %`;
const count = (n: number, noun: string) => `${n} ${noun}${n === 1 ? "" : "s"}`;

/** A sound in IPA, or in words. */
export function soundName(phone: string): string {
  if (phone === "cl") return "a doubled consonant";
  if (phone === "pause") return "a pause";
  return isPhone(phone) ? `[${phoneTable[phone].ipa}]` : phone;
}

/** ヒ begins with the sound of ヒャ, though label files write h. */
export function heardAs(before: string, vowel: string): string {
  return before === "h" && vowel === "i" ? "hy" : before;
}

/** Chance of devoicing with its interval and what is behind it. */
export function chanceText(chance: Chance, table: DevoicingTable): string {
  if (chance.how === "too-few")
    return `chance of devoicing unknown: ${count(chance.alike, "vowel")} of this quality in surroundings alike bear a mark, fewer than the ${leastAlike} it takes`;
  if (chance.estimate === null || table.basis === null)
    return table.predicted > 0
      ? "chance of devoicing unknown: the corpus holds only marks that a text rule predicted"
      : "chance of devoicing unknown: the corpus says nothing about it";
  const range = `${Math.round(100 * chance.low!)} to ${percent(chance.high!)}`;
  const behind =
    chance.tokens === 0
      ? `no such vowel heard, ${estimatedFrom(chance, table)}`
      : `${chance.devoiced} of ${count(chance.tokens, "such vowel")} of ${count(chance.speakers, "speaker")}`;
  return `devoiced in about ${percent(chance.estimate)} (${range}); heard: ${behind}, ${table.basis}`;
}

/** A model learns from all; a share is that of the vowels alike alone. */
function estimatedFrom({ how, alike }: Chance, table: DevoicingTable): string {
  const who = count(table.speakers, "speaker");
  const like = "of this quality in surroundings alike";
  return how === "share"
    ? `estimated from the ${count(alike, "vowel")} ${like}, ${who}`
    : `estimated from ${count(table.tokens, "devoiceable vowel")} of ${who}, ${alike} of them ${like}`;
}

export function ratioText({
  phone,
  estimate,
  low,
  high,
  tokens,
  speakers,
  bound,
  basis,
  devoicedShare,
}: LengthRatio): string {
  const what = phone === "all" ? "long sounds of all kinds last" : `long ${soundName(phone)} lasts`;
  return `${what} ${bound === null ? "" : "at least "}${estimate.toFixed(2)} times as long (${low.toFixed(2)} to ${high.toFixed(2)}); ${count(tokens, "sound")} of ${count(speakers, "speaker")}, ${basis}${devoicedShare === null ? "" : `, ${percent(devoicedShare)} of the short ones whispered and counted too`}`;
}

/** What of a candidate its reasons tell. */
type Reasoned = Omit<Candidate, "words" | "focus" | "evidenceSpeakers" | "parts" | "score"> & {
  readonly words: readonly { readonly sound: string }[];
};

/** Why this candidate stands where it stands, in short parts. */
export function reasonsOf(candidate: Reasoned, table: DevoicingTable): string[] {
  const { chances, ratios, target, c1, c2, heardSpeakers, words } = candidate;
  const first = chances.length === 1 ? heardAs(c1, candidate.environment[0]!) : c1;
  const places = chances.length > 0 ? [`between ${soundName(first)} and ${soundName(c2)}`] : [];
  const sides = chances.length > 1 ? ["/i/: ", "/u/: "] : [""];
  const longest = Math.max(...words.map(({ sound }) => sound.length));
  return [
    ...places,
    ...chances.map((chance, at) => `${sides[at] ?? ""}${chanceText(chance, table)}`),
    ...ratios.map(ratioText),
    ...(target === "moraic-nasal" ? ["no size of the contrast is estimated"] : []),
    heardSpeakers === 0
      ? "not said as a word in the corpus"
      : `${words.length > 1 ? "all words" : "the word"} said by ${count(heardSpeakers, "speaker")}`,
    ...(candidate.accent === "same" ? ["same accent"] : []),
    count(longest, "mora").replace("moras", "morae"),
    ...candidate.confounds.map((name) => confounds[name].text),
  ];
}
