import type { PairKind } from "./findPairs.ts";

export const wordTargets = ["devoiced-i", "devoiced-u", "final", "kept-voiced"] as const;
export const pairTargets = [
  "vowel-length",
  "gemination",
  "triplet",
  "devoiced-pair",
  "moraic-nasal",
] as const;
export const targets = [...wordTargets, ...pairTargets] as const;
export type WordTarget = (typeof wordTargets)[number];
export type PairTarget = (typeof pairTargets)[number];
export type Target = (typeof targets)[number];

/** What each target asks a learner to hear or say. */
export const targetTitles: Readonly<Record<Target, string>> = {
  "devoiced-i": "words whose /i/ is devoiced",
  "devoiced-u": "words whose /u/ is devoiced",
  final: "words whose last vowel, /i/ or /u/ as in です, stands before a pause",
  "kept-voiced": "words whose /i/ or /u/ might be devoiced by rule, but that mostly stay voiced",
  "vowel-length": "pairs that differ in the length of a vowel",
  gemination: "pairs that differ in a doubled consonant",
  triplet: "triplets of short, doubled consonant and long vowel",
  "devoiced-pair": "pairs told apart only by a devoiced vowel's trace on the consonant before it",
  "moraic-nasal": "pairs that differ in ん",
};

export const kindOfTarget: Readonly<Record<Exclude<PairTarget, "triplet">, PairKind>> = {
  "vowel-length": "vowel-length",
  gemination: "gemination",
  "devoiced-pair": "devoiced-vowel",
  "moraic-nasal": "moraic-nasal",
};

export function isPairTarget(target: Target): target is PairTarget {
  return (pairTargets as readonly string[]).includes(target);
}
