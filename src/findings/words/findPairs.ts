import { isVoiceless } from "../../phonology/phones.ts";
import { geminateUnit, longUnit, nasalUnit, phonesOfUnit, type Sound, unitOf, vowelOfUnit } from "./sound.ts";

export const pairKinds = [
  "vowel-length",
  "gemination",
  "long-geminate",
  "moraic-nasal",
  "devoiced-vowel",
] as const;
/**
 * `vowel-length`: two has one ー more (ビル ビール). `gemination`: two has one ッ more (キテ キッテ). `long-geminate`: one
 * has ー where two has ッ (サース サッス). `moraic-nasal`: two has one ン more (カナ カンナ). `devoiced-vowel`: one has /i/ where
 * two has /u/ after the same consonant, and both stand where they may be devoiced (シカ シュカ).
 */
export type PairKind = (typeof pairKinds)[number];

/** Two sounds that differ in one mora only. */
export interface SoundPair {
  readonly kind: PairKind;
  readonly one: Sound;
  readonly two: Sound;
  /** Index of the mora of `two` that is added or other. */
  readonly mora: number;
}

/** Three words told apart by what stands at one place: nothing, ッ or ー. */
export interface SoundTriplet {
  readonly short: Sound;
  readonly geminate: Sound;
  readonly long: Sound;
  readonly mora: number;
}

export interface SoundPairs {
  readonly pairs: SoundPair[];
  readonly triplets: SoundTriplet[];
}

const added: Readonly<Record<string, PairKind>> = {
  [longUnit]: "vowel-length",
  [geminateUnit]: "gemination",
  [nasalUnit]: "moraic-nasal",
};

/**
 * All pairs and triplets among the sounds of a lexicon: each sound looks its own neighbours up, so that the time
 * grows with their number and not with its square. A pair whose added mora can be seen in several places (ッ in a
 * row of ッ) is given once, at the first.
 */
export function findPairs(lexicon: ReadonlyMap<Sound, unknown> | ReadonlySet<Sound>): SoundPairs {
  const pairs: SoundPair[] = [];
  const triplets: SoundTriplet[] = [];
  for (const sound of lexicon.keys()) {
    for (let mora = 0; mora < sound.length; mora++) {
      const unit = sound[mora]!;
      const kind = added[unit];
      if (kind === undefined) swapVowel(sound, mora, lexicon, pairs);
      else if (sound[mora - 1] !== unit && !(kind === "vowel-length" && !followsVowel(sound, mora))) {
        const rest = sound.slice(mora + 1);
        const one = sound.slice(0, mora) + rest;
        const known = startsSoundly(one) && lexicon.has(one);
        if (known) pairs.push({ kind, one, two: sound, mora });
        if (kind !== "vowel-length") continue;
        const two = sound.slice(0, mora) + geminateUnit + rest;
        if (!lexicon.has(two)) continue;
        pairs.push({ kind: "long-geminate", one: sound, two, mora });
        if (known) triplets.push({ short: one, geminate: two, long: sound, mora });
      }
    }
  }
  return { pairs, triplets };
}

function followsVowel(sound: Sound, mora: number): boolean {
  for (let at = mora - 1; at >= 0; at--) if (sound[at] !== longUnit) return vowelOfUnit(sound[at]!) !== null;
  return false;
}

/** ー goes on with what is before it: without that it is no word. */
function startsSoundly(sound: Sound): boolean {
  return sound !== "" && sound[0] !== longUnit;
}

function swapVowel(
  sound: Sound,
  mora: number,
  lexicon: { has(key: Sound): boolean },
  pairs: SoundPair[],
): void {
  const partners = iToU.get(sound[mora]!);
  if (partners === undefined || !mayBeDevoiced(sound, mora)) return;
  for (const partner of partners) {
    const two = sound.slice(0, mora) + partner + sound.slice(mora + 1);
    if (lexicon.has(two)) pairs.push({ kind: "devoiced-vowel", one: sound, two, mora });
  }
}

/** Whether a voiceless consonant, or the end of the word, follows the short vowel of this mora. */
function mayBeDevoiced(sound: Sound, mora: number): boolean {
  const next = sound[mora + 1];
  if (next === undefined) return true;
  return next !== longUnit && isVoiceless(phonesOfUnit(next)[0]!);
}

/**
 * Morae with /i/ after a voiceless consonant, and those with /u/ whose consonant a devoiced vowel would leave alike:
 * the same consonant, or the one with the tongue raised to the palate, as it is before /i/ anyway (キ キュ, ヒ ヒュ).
 */
const iToU: ReadonlyMap<string, readonly string[]> = new Map(
  (["k", "s", "sh", "t", "ch", "ts", "f", "p"] as const)
    .flatMap((consonant): [string, string[]][] => {
      const i = unitOf(consonant, "i");
      const us = [unitOf(consonant, "u"), unitOf(`${consonant}y`, "u")].filter((unit) => unit !== undefined);
      return i === undefined ? [] : [[i, us]];
    })
    .concat([[unitOf("h", "i")!, [unitOf("hy", "u")!]]]),
);
