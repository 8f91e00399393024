import { count } from "./figures.ts";

const many = (n: number, one: string) => `${count(n)} ${one}${n === 1 ? "" : "s"}`;

/** A small picture's row, as a finding keeps it: a share from 0 to 1 or a ratio. */
interface Mark {
  readonly name: string;
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  readonly atLeast: boolean;
}

/** A question and its answer in another language than the results keep them in. */
interface Retold {
  readonly question: string;
  readonly sentence: string;
}

/** The start page. */
export const start = {
  title: "What this corpus shows",
  lead: (datasets: string, speakers: number, utterances: number, tokens: number): string =>
    `${datasets}: ${many(speakers, "speaker")}, ${many(utterances, "utterance")}, ${count(tokens)} vowels and consonants with their times.`,
  /** Null where the results' own sentence is in this language. */
  retell: (_id: string, _marks: readonly Mark[]): Retold | null => null,
  cannot: "What it cannot show",
  onward: "From here to your lesson",
  look: "Look closer",
  nothing:
    "Nothing in these results answers the questions of this page: no label set tells devoiced from voiced vowels or long from short ones.",
  examples: "Examples to hear",
};
