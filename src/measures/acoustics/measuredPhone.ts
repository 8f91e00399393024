import type { Interval } from "../../alignment/interval.ts";
import { isPhone, phoneTable } from "../../phonology/phones.ts";

/** What the acoustic measures need of an interval; times in ms from the start of the recording. */
export type MeasuredPhone = Pick<Interval, "phone" | "startMs" | "endMs" | "closureEndMs">;

/** How a phone is treated when its sound is looked at. */
export type SoundClass =
  | "high-vowel"
  | "other-vowel"
  | "nasal"
  | "voiceless-fricative"
  | "voiceless-stop"
  | "voiceless-affricate"
  | "voiceless-closure"
  | "voiced-obstruent"
  | "other-voiced"
  | "pause";

/** Class of a phone; an unknown symbol counts as a pause. */
export function soundClass(phone: string): SoundClass {
  if (!isPhone(phone)) return "pause";
  if (phone === "cl") return "voiceless-closure";
  const { kind, manner, voiced } = phoneTable[phone];
  if (kind === "vowel") return phone === "i" || phone === "u" ? "high-vowel" : "other-vowel";
  if (manner === "nasal") return "nasal";
  if (manner === "pause") return "pause";
  if (manner === "stop" || manner === "fricative" || manner === "affricate") {
    return voiced ? "voiced-obstruent" : `voiceless-${manner}`;
  }
  return "other-voiced";
}

export function isVoicelessClass(kind: SoundClass): boolean {
  return kind.startsWith("voiceless-");
}

export function isVowelClass(kind: SoundClass): boolean {
  return kind === "high-vowel" || kind === "other-vowel";
}
