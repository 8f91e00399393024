import { fewWordsCarry, theseWordsOnly, widerByWords } from "../../messages/ruleWords.ts";
import type { Interval } from "../../statistics/interval.ts";

/** Words from which on they can stand for words like these; of fewer a verdict speaks as it does of one speaker. */
export const leastWords = 5;

interface Counted {
  readonly low: number | null;
  readonly high: number | null;
  /** Null where words are unknown or were not counted. */
  readonly words: number | null;
  /** The interval that allows for words; null where they cannot be allowed for. */
  readonly crossed: (Interval & { readonly widest: string }) | null;
}

/** The interval that judges: allowing for words where there are enough of them. */
export function allowingForWords({ low, high, words, crossed }: Counted) {
  return crossed !== null && (words ?? 0) >= leastWords
    ? { low: crossed.low, high: crossed.high }
    : { low, high };
}

/** What words do to the interval that judges. */
export function wordDoubts({ low, words, crossed }: Counted): string[] {
  if (words === null || low === null) return [];
  if (words < leastWords) return [theseWordsOnly(words)];
  if (crossed === null) return [fewWordsCarry()];
  return crossed.widest === "speakers" ? [] : [widerByWords(words)];
}
