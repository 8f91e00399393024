import { isPhone, phoneTable } from "../../phonology/phones.ts";
import type { DataColumn } from "../../statistics/models/term.ts";
import type { TokenTable } from "../tokenTable.ts";
import { placeColumn } from "./devoicingColumns.ts";
import { centred, renamed } from "./modelColumns.ts";

const consonants = [
  "voiceless stop",
  "voiced stop",
  "voiceless affricate",
  "voiceless fricative",
  "voiced fricative",
  "nasal",
  "liquid",
  "approximant",
  "geminate",
] as const;

/**
 * Terms of the model of log duration over the chosen rows. The first level of each is the reference: a short /a/
 * between voiceless stops, voiced, unaccented, inside its stretch.
 */
export function durationColumns(
  { labels, numbers }: TokenTable,
  rows: Uint32Array,
  withDevoicing: boolean,
): Record<string, DataColumn> {
  return {
    vowel: renamed(labels.phone, rows, ["a", "i", "u", "e", "o"]),
    length: renamed(labels.length, rows, ["short", "long"]),
    before: renamed(labels.before, rows, consonants, consonantClass),
    after: renamed(labels.after, rows, consonants, consonantClass),
    accented: renamed(labels.accented, rows, ["false", "true"]),
    position: placeColumn(labels.position, rows),
    ...(withDevoicing ? { devoiced: renamed(labels.devoiced, rows, ["false", "true"]) } : {}),
    speechRate: centred(numbers.speechRateMoraePerSec, rows),
  };
}

/** Manner and, where both occur, voice of a consonant; null for vowels, pauses and unknown phones. */
export function consonantClass(phone: string): string | null {
  if (!isPhone(phone)) return null;
  const { kind, manner, voiced } = phoneTable[phone];
  if (kind !== "consonant") return null;
  const both = manner === "stop" || manner === "affricate" || manner === "fricative";
  return both ? `${voiced ? "voiced" : "voiceless"} ${manner}` : manner;
}
