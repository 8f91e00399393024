import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import type { Speaker } from "./speakers.ts";

export interface Sentence {
  /** Number in the list, from 1. */
  readonly number: number;
  /** What the sentence is there for; `core` is read by everyone. */
  readonly group: string;
  readonly text: string;
}

/** Our own sentences, see `sentences.tsv`. */
export function readSentences(): Sentence[] {
  const rows: { group: string; text: string }[] = parse(
    readFileSync(new URL("sentences.tsv", import.meta.url), "utf8"),
    { columns: true, delimiter: "\t" },
  );
  return rows.map(({ group, text }, index) => ({ number: index + 1, group, text }));
}

export interface Task {
  readonly id: string;
  readonly text: string;
  readonly speaker: Speaker;
}

/** Who reads what: the core is read by all, every other sentence by one, in turn. */
export function shareOut(sentences: readonly Sentence[], speakers: readonly Speaker[]): Task[] {
  const core = sentences.filter(({ group }) => group === "core");
  const rest = sentences.filter(({ group }) => group !== "core");
  return speakers.flatMap((speaker, turn) => {
    const own = rest.filter((_, index) => index % speakers.length === turn);
    return [...core, ...own].map(({ number, text }) => ({
      id: `${speaker.id}-${String(number).padStart(3, "0")}`,
      text,
      speaker,
    }));
  });
}
