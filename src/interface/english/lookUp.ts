import { count, figures } from "./figures.ts";

const space = "\u00a0";

/** The page that looks one word up. */
export const lookUp = {
  title: "Look up a word",
  description:
    "Any word in kana, beat by beat: the chance that each vowel is whispered, why, and where to hear it.",
  lead: "Type a word in kana. Each beat is a box; below it stands how likely its vowel is whispered by speakers like those of this corpus, and why.",
  label: "Word in kana or romaji",
  placeholder: "きくち",
  examples: "For example",
  exampleWords: ["きた", "しつもん", "ですか", "がっこう", "ふくしゅう"],
  kanji: (text: string) =>
    `“${text}” is not all kana. This page reads kana only, since a dictionary would be too large to load. Type the reading, or ask the terminal, which knows kanji:`,
  command: (text: string) => `npx morascope words RESULTS --look-up ${text}`,
  notKana: (odd: string) => `“${odd}” is no kana and no romaji.`,
  noEvidence:
    "This corpus does not tell how often vowels are whispered, so that the chances are unknown. The beats are right all the same.",
  onlyPredicted:
    "This corpus holds only marks that a text rule predicted. They are no evidence, so that the chances are unknown.",

  readings: "Said as",
  readAs: { long: "long vowel", apart: "two vowels" },
  beats: (n: number) => (n === 1 ? "1 beat" : `${n} beats`),
  row: (kana: string, n: number) => `${kana}: ${lookUp.beats(n)}`,
  accent: "Accent: the pitch falls after",
  accentNames: { unknown: "I don’t know", flat: "no beat (flat)" },
  afterBeat: (n: number, kana: string) => `beat ${n}, ${kana}`,
  kinds: {
    long: "lengthens the vowel",
    geminate: "silent beat before the consonant",
    nasal: "ん, a beat of its own",
  },
  whispered: "likely whispered",
  voiced: "likely voiced",
  open: "may go either way",
  unknown: "unknown",
  chance: (estimate: string) => `expected: whispered in about ${estimate}`,
  percent: (share: number) => `${Math.round(100 * share)}${space}%`,

  vowel: "The vowels, one by one",
  heading: (kana: string, vowel: string) => `${kana}: /${vowel}/`,
  pause: "a pause",
  doubled: "a doubled consonant",
  between: (before: string, after: string) => `between ${before} and ${after}`,
  why: {
    long: "It is long, and long vowels hardly ever lose their voice.",
    low: "It is /a/, /e/ or /o/: these are seldom whispered.",
    voice: "It does not stand between two voiceless sounds.",
    both: "It stands between two voiceless sounds: there /i/ and /u/ are often whispered.",
    pause: "It follows a voiceless sound and ends the word before a pause.",
  },
  accented: "The accent lies on it, which tends to keep the voice.",
  neighbour: "The vowel next to it may be whispered too; two in a row seldom are.",
  heard: (devoiced: number, tokens: number, speakers: number, basis: string) =>
    `Heard in this corpus: ${count(devoiced)} of ${count(tokens)} such vowels were whispered, ${figures.speakers(speakers)} (${basis}).`,
  /** Why the expected share is not the share heard: `others` speak too. */
  expectedByModel: (others: number) =>
    `The expected share draws on ${count(others)} others too (/i/ and /u/ after a voiceless sound and before one or a pause), weighed by their surroundings: the fewer were heard here, the nearer it stays to those, so that the two may differ.`,
  expectedByAlike: (alike: number) =>
    `The expected share is that of all ${count(alike)} of the same quality in surroundings alike, so that the two may differ.`,
  /** `alike` of them are of the same quality, like it before a pause or between consonants, or more alike still. */
  notHeard: (tokens: number, speakers: number, alike: number) =>
    `No vowel in exactly these surroundings was heard; the chance is put together from ${count(tokens)} others (${count(alike)} of the same quality in surroundings alike), ${figures.speakers(speakers)}.`,
  tooFew: (alike: number, least: number) =>
    `How often it is whispered is unknown: this corpus marks ${count(alike)} of this quality in surroundings alike, and it takes at least ${count(least)}.`,
  accentMoves: "If the accent moves",
  withAccent: (kana: string, on: string, off: string) =>
    `${kana}: about ${on} with the accent on it, about ${off} with the accent elsewhere.`,
  accentUnknownHere: (kana: string) =>
    `${kana}: this corpus does not say where accents lie, so what one would change is unknown.`,
  nearest: "Nearest to hear",
  eachWord:
    "Counted in each word alone. The expected share speaks of all such vowels: one word may differ from it, most of all one heard only a few times.",
  noNearest: "Nothing like it is said in this corpus.",
  likeness: {
    word: "the same sounds",
    sounds: "same sounds around it",
    kinds: "same kinds of sounds around it",
  },
  attested: (devoiced: number, tokens: number, speakers: number) =>
    `heard whispered in ${count(devoiced)} of ${count(tokens)}, ${figures.speakers(speakers)}`,
  alone: "The word is taken as said alone, between pauses.",
};
