import type { TokenRow } from "../measures/columns.ts";

/** What durations are measured against. */
export type DurationUnit = "mora" | "word";

type Normalised = Pick<
  TokenRow,
  "utterance" | "index" | "word" | "labelSet" | "startMs" | "endMs" | "durationMs" | "speechRateMoraePerSec"
>;

/**
 * Tokens with durations relative to the speech around them, in thousandths: of the mean mora of the stretch between
 * pauses (`mora`), or of the word the token stands in (`word`). `durationMs` then carries thousandths instead of ms, so
 * that cells, ratios and separation work on them unchanged. Tokens whose unit is unknown are left out. Tokens of an
 * utterance must stand together in order. Vowel ÷ word after Hirata Y. (2004) J. Phon. 32:565–589.
 */
export function normaliseDurations<T extends Normalised>(tokens: readonly T[], unit: DurationUnit): T[] {
  const lengths = unit === "word" ? wordLengthsMs(tokens) : null;
  return tokens.flatMap((token, i) => {
    const unitMs = lengths === null ? moraMs(token) : lengths[i]!;
    return unitMs > 0 ? [{ ...token, durationMs: (1000 * token.durationMs) / unitMs }] : [];
  });
}

function moraMs({ speechRateMoraePerSec: rate }: Normalised): number {
  return rate === null ? Number.NaN : 1000 / rate;
}

/** Duration of each token's word, from its first token's start to its last one's end; NaN where there is no word. */
function wordLengthsMs(tokens: readonly Normalised[]): Float64Array {
  const lengths = new Float64Array(tokens.length).fill(Number.NaN);
  for (let from = 0; from < tokens.length; ) {
    let to = from + 1;
    while (to < tokens.length && sameWord(tokens[to - 1]!, tokens[to]!)) to++;
    if (tokens[from]!.word !== null) lengths.fill(tokens[to - 1]!.endMs - tokens[from]!.startMs, from, to);
    from = to;
  }
  return lengths;
}

/** Neighbours of one word; two equal words in a row cannot be told from one and are taken as one. */
function sameWord(a: Normalised, b: Normalised): boolean {
  return (
    a.word !== null &&
    a.word === b.word &&
    a.utterance === b.utterance &&
    a.labelSet === b.labelSet &&
    b.index === a.index + 1
  );
}
