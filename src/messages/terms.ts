/** Terms of the models and their levels as a person says them. Names that are not ours stay as they are. */

const sounds: Readonly<Record<string, string>> = {
  stop: "a stop",
  affricate: "an affricate",
  fricative: "a fricative",
  "h-row": "a sound of the h-row",
  geminate: "a doubled consonant",
  pause: "a pause",
  nasal: "a nasal",
  liquid: "a liquid",
  approximant: "an approximant",
};

const soundName = (level: string) => sounds[level] ?? `a ${level}`;
const truth = (yes: string, no: string) => (level: string) => (level === "true" ? yes : no);

const levels: Readonly<Record<string, (level: string) => string>> = {
  vowel: (level) => `/${level}/`,
  length: (level) => `${level} vowels`,
  before: (level) => `preceded by ${soundName(level)}`,
  after: (level) => `followed by ${soundName(level)}`,
  accented: truth("accented", "unaccented"),
  position: (level) => (level === "initial" ? "first mora after a pause" : "later than the first mora"),
  devoiced: truth("devoiced", "voiced"),
  devoiceableNeighbour: truth("beside another devoiceable vowel", "no devoiceable vowel beside it"),
};

const terms: Readonly<Record<string, string>> = {
  vowel: "the vowel",
  length: "the length of the vowel",
  before: "the sound before",
  after: "the sound after",
  accented: "accent",
  position: "the place in the stretch",
  devoiced: "devoicing",
  devoiceableNeighbour: "a devoiceable vowel beside it",
  speechRate: "speech rate",
  wordFrequency: "the word's frequency",
  word: "the word",
};

/** `the sound after`. */
export const termInWords = (term: string) => terms[term] ?? term;

/** `followed by a pause`; a number has no level: `speech rate`. */
export const levelInWords = (term: string, level: string | null) =>
  level === null
    ? termInWords(term)
    : (levels[term]?.(level) ?? (term in terms ? level : `${term}=${level}`));

const inTable: typeof levels = {
  before: soundName,
  after: soundName,
  position: (level) => (level === "initial" ? "first mora" : "later"),
  devoiceableNeighbour: truth("yes", "no"),
};

/** A level in a table whose row names the term already: `a pause`, `unaccented`. */
export const levelInTable = (term: string, level: string) =>
  inTable[term]?.(level) ?? levelInWords(term, level);

/** The name of a coefficient, `after=pause`, `speechRate` or a product of such, in words. */
export const coefficientInWords = (name: string) =>
  name
    .split(" × ")
    .map((part) => {
      const [term, level = null] = part.split("=");
      return levelInWords(term!, level);
    })
    .join(" × ");

/** The same words at the start of a sentence. */
export const capital = (words: string) =>
  words.includes("=") ? words : words.charAt(0).toUpperCase() + words.slice(1);
