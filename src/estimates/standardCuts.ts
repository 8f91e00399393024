import type { Dim } from "./dimensions.ts";
import type { Filter } from "./filter.ts";
import type { Contrast } from "./lengthContrast.ts";

/** A cut that every report makes, under a name that stays the same from build to build. */
export interface StandardRate {
  readonly id: string;
  readonly title: string;
  readonly filter: Filter;
  readonly by: readonly Dim[];
}

export interface StandardRatio {
  readonly id: string;
  readonly title: string;
  readonly contrast: Contrast;
  readonly by: readonly Dim[];
}

const high = ["i", "u"];
const nonHigh = ["a", "e", "o"];

/** What a reader asks first about devoicing. Long vowels are left out: they are a case of their own. */
export const standardRates: readonly StandardRate[] = [
  {
    id: "high-between-voiceless",
    title: "/i/ and /u/ between voiceless consonants",
    filter: { vowel: high, before: "voiceless", after: "voiceless", length: "short" },
    by: ["phone"],
  },
  {
    id: "high-before-pause",
    title: "/i/ and /u/ between a voiceless consonant and a pause",
    filter: { vowel: high, before: "voiceless", after: "pause", length: "short" },
    by: ["phone"],
  },
  {
    id: "high-before-voiced",
    title: "/i/ and /u/ before a voiced sound",
    filter: { vowel: high, after: "voiced", length: "short" },
    by: ["phone"],
  },
  {
    id: "non-high-between-voiceless",
    title: "/a/, /e/ and /o/ between voiceless consonants",
    filter: { vowel: nonHigh, before: "voiceless", after: "voiceless", length: "short" },
    by: ["phone"],
  },
];

/** What a reader asks first about length. */
export const standardRatios: readonly StandardRatio[] = [
  { id: "vowel-length", title: "Long vowels against short ones", contrast: "vowel-length", by: ["phone"] },
  {
    id: "gemination",
    title: "Doubled consonants against single ones",
    contrast: "gemination",
    by: ["phone"],
  },
];
