import type { TokenRow } from "../../measures/columns.ts";

export type TimedToken = Pick<
  TokenRow,
  | ("dataset" | "labelSet" | "speaker" | "utterance" | "index")
  | ("kind" | "phone" | "length" | "before" | "word")
  | ("startMs" | "endMs" | "durationMs" | "moraInPhrase" | "devoiced" | "devoicedBasis")
>;

/** Neighbouring tokens of one word or one stretch between pauses. */
export interface Stretch<T extends TimedToken = TimedToken> {
  readonly speaker: string;
  readonly morae: number;
  readonly durationMs: number;
  readonly tokens: readonly T[];
}

/**
 * Tokens (in the order of the recordings) cut into words or into stretches between pauses. Tokens without a word belong
 * to no word; two equal words in a row cannot be told apart and count as one.
 */
export function stretchesOf<T extends TimedToken>(
  tokens: readonly T[],
  unit: "word" | "phrase",
): Stretch<T>[] {
  const stretches: Stretch<T>[] = [];
  for (let from = 0; from < tokens.length; ) {
    let to = from + 1;
    while (to < tokens.length && continues(tokens[to - 1]!, tokens[to]!, unit)) to++;
    const [first, last] = [tokens[from]!, tokens[to - 1]!];
    if (unit === "phrase" || first.word !== null)
      stretches.push({
        speaker: first.speaker,
        morae:
          last.moraInPhrase + (last.kind === "vowel" && last.length === "long" ? 2 : 1) - first.moraInPhrase,
        durationMs: last.endMs - first.startMs,
        tokens: tokens.slice(from, to),
      });
    from = to;
  }
  return stretches;
}

function continues(a: TimedToken, b: TimedToken, unit: "word" | "phrase"): boolean {
  const neighbours =
    a.index + 1 === b.index &&
    a.utterance === b.utterance &&
    a.speaker === b.speaker &&
    a.labelSet === b.labelSet &&
    a.dataset === b.dataset;
  return neighbours && b.before !== "pause" && (unit === "phrase" || a.word === b.word);
}
