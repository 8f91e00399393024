import { isDevoiceable, type Position, position } from "../../phonology/environment.ts";
import { isVoiceless, type Phone, type Vowel } from "../../phonology/phones.ts";
import { geminateUnit, longUnit, phonesOfUnit, type Sound, vowelOfUnit } from "./sound.ts";

/** A vowel of a word said alone, between pauses. */
export interface WordVowel {
  readonly mora: number;
  readonly vowel: Vowel;
  readonly long: boolean;
  readonly before: Phone;
  /** cl before a geminate. */
  readonly after: Phone;
  /** Whether the accent nucleus lies on it; null when the accent is unknown. */
  readonly accented: boolean | null;
  readonly position: Position;
  readonly devoiceable: boolean;
  /** Whether the vowel next door is devoiceable too. */
  readonly neighbour: boolean;
}

export const beforeGroups = ["stop", "affricate", "sibilant", "breath"] as const;
export const afterGroups = ["stop", "affricate", "sibilant", "breath", "geminate", "pause"] as const;
export type AfterGroup = (typeof afterGroups)[number];

const groupOfPhone: Readonly<Partial<Record<string, AfterGroup>>> = {
  ...Object.fromEntries(["k", "ky", "kw", "t", "ty", "p", "py"].map((phone) => [phone, "stop"])),
  ...Object.fromEntries(["ch", "ts", "tsy"].map((phone) => [phone, "affricate"])),
  ...Object.fromEntries(["s", "sh"].map((phone) => [phone, "sibilant"])),
  ...Object.fromEntries(["h", "hy", "f", "fy"].map((phone) => [phone, "breath"])),
  cl: "geminate",
  pause: "pause",
};

/** Kind of voiceless consonant, closure or pause; null for everything voiced. */
export function groupOf(phone: string): AfterGroup | null {
  return groupOfPhone[phone] ?? null;
}

/** Vowels that are not devoiceable, from the likeliest to be whispered after all to the least. */
export const otherPlaces = [
  "high-before-voice",
  "high-after-voice",
  "low-between",
  "low-elsewhere",
  "long",
] as const;

/** What of a vowel's surroundings tells how likely it is devoiced; tokens and words are described by the same. */
export interface Surroundings {
  readonly vowel: string;
  readonly long: boolean;
  readonly before: string;
  readonly after: string;
  readonly accented: boolean | null;
  readonly neighbour: boolean;
}

/**
 * Name of the environment: `i stop sibilant no alone` (vowel, C1, C2, accent yes no or unknown, alone or in-a-row) for
 * devoiceable vowels, one of `otherPlaces` for the rest.
 */
export function environmentOf({ vowel, long, before, after, accented, neighbour }: Surroundings): string {
  if (long) return "long";
  const high = vowel === "i" || vowel === "u";
  if (!high) return isVoiceless(before) && isVoiceless(after) ? "low-between" : "low-elsewhere";
  if (!isDevoiceable(before, vowel, after))
    return isVoiceless(before) ? "high-before-voice" : "high-after-voice";
  const c1 = groupOf(before);
  if (c1 === null || c1 === "geminate" || c1 === "pause") return "high-after-voice";
  return `${vowel} ${c1} ${groupOf(after)} ${accentLevel(accented)} ${neighbour ? "in-a-row" : "alone"}`;
}

export function accentLevel(accented: boolean | null): "yes" | "no" | "unknown" {
  return accented === null ? "unknown" : accented ? "yes" : "no";
}

/** The vowels of a word said alone; `accent` is the mora after which the pitch falls, from 1, 0 flat, null unknown. */
export function vowelsOf(sound: Sound, accent: number | null): WordVowel[] {
  const found: Omit<WordVowel, "neighbour">[] = [];
  for (let mora = 0; mora < sound.length; mora++) {
    const vowel = sound[mora] === longUnit ? null : vowelOfUnit(sound[mora]!);
    if (vowel === null) continue;
    const before = phoneBefore(sound, mora);
    const long = sound[mora + 1] === longUnit;
    const after = phoneAfter(sound, mora);
    found.push({
      mora,
      vowel,
      long,
      before,
      after,
      accented: accent === null ? null : accent === mora + 1 || (long && accent === mora + 2),
      position: position(mora, sound.length),
      devoiceable: !long && isDevoiceable(before, vowel, after),
    });
  }
  const devoiceable = found.filter((one) => one.devoiceable);
  return found.map((one) => ({ ...one, neighbour: devoiceable.some((other) => isNextDoor(one, other)) }));
}

function isNextDoor(one: { mora: number; long: boolean }, other: { mora: number }): boolean {
  return other.mora === one.mora - 1 || other.mora === one.mora + (one.long ? 2 : 1);
}

function phoneBefore(sound: Sound, mora: number): Phone {
  const own = phonesOfUnit(sound[mora]!);
  if (own.length > 1) return own[0]!;
  let at = mora - 1;
  while (at > 0 && sound[at] === longUnit) at--;
  return at < 0 ? "pause" : (phonesOfUnit(sound[at]!).at(-1) ?? "pause");
}

function phoneAfter(sound: Sound, mora: number): Phone {
  let at = mora + 1;
  while (sound[at] === longUnit) at++;
  if (at >= sound.length) return "pause";
  return sound[at] === geminateUnit ? "cl" : phonesOfUnit(sound[at]!)[0]!;
}
