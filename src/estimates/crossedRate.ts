import { tMultiplier } from "../statistics/distributions.ts";
import { type Interval, unionOf } from "../statistics/interval.ts";
import { clusteredRate } from "./clusteredRate.ts";

/** One vowel with a devoicing mark that is evidence. */
export interface MarkedVowel {
  readonly speaker: string;
  readonly word: string;
  readonly devoiced: boolean;
}

/** Vowels of one speaker and word with such marks. */
export interface MarkedVowels {
  readonly speaker: string;
  readonly word: string;
  readonly tokens: number;
  readonly devoiced: number;
}

export interface CrossedRate extends Interval {
  readonly estimate: number;
  readonly tokens: number;
  readonly speakers: number;
  readonly words: number;
  /** Which clustering made the interval as wide as it is. */
  readonly widest: "speakers" | "words" | "both" | "all or none";
}

/**
 * Devoicing rate with an interval that allows tokens of one speaker and tokens of one word to be alike: by speakers
 * (`clusteredRate`), and where they are wider by words and by both together (variance by speakers + by words − by
 * speaker and word; Cameron A. C., Gelbach J. B. & Miller D. L. (2011) J. Bus. Econ. Stat. 29:238–249), t with one less
 * degree of freedom than the smaller number of clusters, on the logit scale. Null without tokens.
 */
export function crossedRate(vowels: readonly MarkedVowel[], level: number): CrossedRate | null {
  return crossedRateOfCounts(
    vowels.map(({ speaker, word, devoiced }) => ({ speaker, word, tokens: 1, devoiced: devoiced ? 1 : 0 })),
    level,
  );
}

/** `crossedRate` of vowels already counted by speaker and word, of which several entries may tell. */
export function crossedRateOfCounts(vowels: readonly MarkedVowels[], level: number): CrossedRate | null {
  if (vowels.length === 0) return null;
  const bySpeaker = countBy(vowels, (vowel) => vowel.speaker);
  const byWord = countBy(vowels, (vowel) => vowel.word);
  const byBoth = countBy(vowels, (vowel) => `${vowel.speaker}\u0000${vowel.word}`);
  const tokens = vowels.reduce((sum, vowel) => sum + vowel.tokens, 0);
  const counts = { tokens, speakers: bySpeaker.marked.length, words: byWord.marked.length };
  const speakers = clusteredRate(bySpeaker.marked, bySpeaker.devoiced, level);
  const { estimate } = speakers;
  if (estimate === 0 || estimate === 1) {
    const words = clusteredRate(byWord.marked, byWord.devoiced, level);
    return { estimate, ...unionOf(speakers, words), ...counts, widest: "all or none" };
  }
  const words = clusteredRate(byWord.marked, byWord.devoiced, level);
  const variance = variances(bySpeaker, estimate) + variances(byWord, estimate) - variances(byBoth, estimate);
  const df = Math.min(counts.speakers, counts.words) - 1;
  const both =
    variance > 0 && df > 0
      ? logitInterval(estimate, (tMultiplier(level, df) * Math.sqrt(variance)) / (estimate * (1 - estimate)))
      : speakers;
  const interval = unionOf(unionOf(speakers, words), both);
  const width = (one: Interval) => one.high - one.low;
  const widest =
    width(both) > Math.max(width(speakers), width(words))
      ? "both"
      : width(words) > width(speakers)
        ? "words"
        : "speakers";
  return { estimate, ...interval, ...counts, widest };
}

interface Counts {
  readonly marked: number[];
  readonly devoiced: number[];
}

function countBy(vowels: readonly MarkedVowels[], keyOf: (vowel: MarkedVowels) => string): Counts {
  const place = new Map<string, number>();
  const counts: Counts = { marked: [], devoiced: [] };
  for (const vowel of vowels) {
    const key = keyOf(vowel);
    const k = place.get(key) ?? counts.marked.push(0) - 1;
    place.set(key, k);
    counts.marked[k]! += vowel.tokens;
    counts.devoiced[k] = (counts.devoiced[k] ?? 0) + vowel.devoiced;
  }
  return counts;
}

/** Variance of the pooled share by the clusters' residual sums, with K / (K − 1). */
function variances({ marked, devoiced }: Counts, rate: number): number {
  let tokens = 0;
  let squares = 0;
  for (let k = 0; k < marked.length; k++) {
    tokens += marked[k]!;
    squares += (devoiced[k]! - rate * marked[k]!) ** 2;
  }
  return marked.length < 2 ? 0 : (squares / tokens ** 2) * (marked.length / (marked.length - 1));
}

function logitInterval(p: number, half: number): Interval {
  const logit = Math.log(p / (1 - p));
  return { low: 1 / (1 + Math.exp(half - logit)), high: 1 / (1 + Math.exp(-half - logit)) };
}
