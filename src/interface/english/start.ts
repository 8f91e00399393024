import { count } from "./figures.ts";

const many = (n: number, one: string) => `${count(n)} ${one}${n === 1 ? "" : "s"}`;

/** The start page. */
export const start = {
  title: "What this corpus shows",
  lead: (datasets: string, speakers: number, utterances: number, tokens: number): string =>
    `${datasets}: ${many(speakers, "speaker")}, ${many(utterances, "utterance")}, ${count(tokens)} vowels and consonants with their times.`,
  /** The questions by their ids; `where`: the surroundings, as they stand at the start of a sentence. */
  questions: {
    "high-between-voiceless": {
      question: "Are i and u whispered between voiceless consonants?",
      where: "Between voiceless consonants",
    },
    "high-before-pause": {
      question: "And before a pause, as in です?",
      where: "Between a voiceless consonant and a pause",
    },
    "high-before-voiced": { question: "And before a voiced sound?", where: "Before a voiced sound" },
    "non-high-between-voiceless": {
      question: "Do a, e and o do the same?",
      where: "Between voiceless consonants",
    },
    "vowel-length": { question: "Does a long vowel last twice as long?", where: "" },
    gemination: { question: "Does a doubled consonant take an extra beat?", where: "" },
  } as Readonly<Record<string, { readonly question: string; readonly where: string }>>,
  /** How the numbers of an answer were come by, as a line of its own. */
  basis: (how: string) => `${how.charAt(0).toUpperCase()}${how.slice(1)}.`,
  cannot: "What it cannot show",
  onward: "From here to your lesson",
  look: "Look closer",
  nothing:
    "Nothing in these results answers the questions of this page: no label set tells devoiced from voiced vowels or long from short ones.",
  examples: "Examples to hear",
};
