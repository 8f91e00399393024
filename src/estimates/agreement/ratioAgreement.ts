import { isConsonant, isVowel } from "../../phonology/phones.ts";
import type { IntervalPair } from "./compareUtterance.ts";

/** One ratio of mean durations twice, over the very same sounds: by the results' times and by the reference's. */
export interface RatioPair {
  readonly own: number | null;
  readonly reference: number | null;
  /** own ÷ reference − 1, in %: positive where the results make the difference larger. */
  readonly errorPercent: number | null;
  /** Sounds on the two sides. */
  readonly long: number;
  readonly short: number;
}

export interface RatioAgreement extends RatioPair {
  /** The same for geminates against single consonants after a vowel. */
  readonly gemination: RatioPair;
}

/**
 * Long ÷ short vowels between consonants, and geminates ÷ single consonants, of consonants that occur doubled. What is
 * long and what is doubled is told by the results' reading, the same for both sides: only the times differ.
 */
export function ratioAgreement(pairs: readonly IntervalPair[]): RatioAgreement {
  const vowels = pairs.filter(
    ({ own, before, after }) => isVowel(own.phone) && isConsonant(before) && isConsonant(after),
  );
  const doubled = new Set(pairs.flatMap(({ own }) => (own.length === "geminate" ? [own.phone] : [])));
  const consonants = pairs.filter(({ own, before }) => doubled.has(own.phone) && isVowel(before));
  return {
    ...ratioOf(withLength(vowels, "long"), withLength(vowels, "short")),
    gemination: ratioOf(withLength(consonants, "geminate"), withLength(consonants, "single")),
  };
}

function withLength(pairs: readonly IntervalPair[], length: string): IntervalPair[] {
  return pairs.filter(({ own }) => own.length === length);
}

function ratioOf(long: readonly IntervalPair[], short: readonly IntervalPair[]): RatioPair {
  const counts = { long: long.length, short: short.length };
  if (long.length === 0 || short.length === 0)
    return { own: null, reference: null, errorPercent: null, ...counts };
  const ownMs = ({ own }: IntervalPair) => own.endMs - own.startMs;
  const referenceMs = (pair: IntervalPair) => pair.referenceMs;
  const own = mean(long, ownMs) / mean(short, ownMs);
  const reference = mean(long, referenceMs) / mean(short, referenceMs);
  return { own, reference, errorPercent: 100 * (own / reference - 1), ...counts };
}

function mean(pairs: readonly IntervalPair[], ms: (pair: IntervalPair) => number): number {
  return pairs.reduce((sum, pair) => sum + ms(pair), 0) / pairs.length;
}
