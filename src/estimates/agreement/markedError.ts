import {
  type JudgedVowel,
  type KnownError,
  knownError,
  type Share,
} from "../../measures/acoustics/knownError.ts";
import { exactInterval } from "../../statistics/exactInterval.ts";

/** A person's mark on one vowel of a sample. */
export interface VowelMark {
  readonly dataset: string;
  readonly utterance: string;
  readonly phone: string;
  /** Where the vowel stood when the sample was drawn, ms. */
  readonly startMs: number;
  readonly endMs: number;
  /** Null: the person was unsure. */
  readonly devoiced: boolean | null;
  /** How many vowels of the corpus it stands for: size of its stratum ÷ number drawn from it. */
  readonly weight: number;
}

/** A vowel of a run with the measured decision. */
export interface DecidedVowel {
  readonly dataset: string;
  readonly utterance: string;
  readonly phone: string;
  readonly startMs: number;
  readonly endMs: number;
  readonly devoicedHeard: boolean | null;
  readonly devoicedProbability: number | null;
}

export interface MarkedError {
  /**
   * Sensitivity, specificity, F1, kappa for the corpus: each mark counts for as many vowels as it stands for. How well
   * probabilities are calibrated is told by the sample alone: `calibrationError` is null here.
   */
  readonly corpus: KnownError;
  /** The same over the sample as it is, where doubtful vowels are over-represented. */
  readonly sample: KnownError;
  /** Marks that were used, that said "unsure", and whose vowel this run does not have or did not hear. */
  readonly used: number;
  readonly unsure: number;
  readonly notFound: number;
}

/** A vowel is the marked one when its centre lies no farther from it than this. */
const sameVowelMs = 60;

/**
 * Error of the measured decision by a person's marks. Shares of the corpus are weighted by the sample's design, as a
 * sample drawn by the decision itself must be: Begg C. B. & Greenes R. A. (1983) Biometrics 39:207–215 (from memory).
 * Intervals are exact ones for the effective number of marks, (Σw)² ÷ Σw², after Kish L. (1965) Survey Sampling (from
 * memory): `of` is that number, and equals the number of marks when all weigh the same.
 */
export function markedError(
  marks: readonly VowelMark[],
  vowels: Iterable<DecidedVowel>,
  level = 0.95,
): MarkedError {
  const nearest = findVowels(marks, vowels);
  const judged: (JudgedVowel & { readonly weight: number })[] = [];
  let unsure = 0;
  let notFound = 0;
  for (const [i, { devoiced: truth, weight }] of marks.entries()) {
    const vowel = nearest[i];
    if (truth === null) unsure++;
    else if (vowel === undefined || vowel.devoicedHeard === null || vowel.devoicedProbability === null)
      notFound++;
    else
      judged.push({ devoiced: vowel.devoicedHeard, probability: vowel.devoicedProbability, truth, weight });
  }
  return {
    corpus: weightedError(judged, level),
    sample: knownError(judged, level),
    used: judged.length,
    unsure,
    notFound,
  };
}

function findVowels(
  marks: readonly VowelMark[],
  vowels: Iterable<DecidedVowel>,
): (DecidedVowel | undefined)[] {
  const wanted = new Map<string, number[]>();
  for (const [i, mark] of marks.entries()) {
    const key = keyOf(mark);
    wanted.set(key, [...(wanted.get(key) ?? []), i]);
  }
  const found: (DecidedVowel | undefined)[] = marks.map(() => undefined);
  for (const vowel of vowels)
    for (const i of wanted.get(keyOf(vowel)) ?? []) {
      const far = Math.abs(centre(vowel) - centre(marks[i]!));
      const best = found[i];
      const nearer = best === undefined || far < Math.abs(centre(best) - centre(marks[i]!));
      if (far <= sameVowelMs && nearer) found[i] = vowel;
    }
  return found;
}

function keyOf({ dataset, utterance, phone }: VowelMark | DecidedVowel): string {
  return `${dataset}\u0000${utterance}\u0000${phone}`;
}

function centre({ startMs, endMs }: VowelMark | DecidedVowel): number {
  return (startMs + endMs) / 2;
}

function weightedError(
  vowels: readonly (JudgedVowel & { readonly weight: number })[],
  level: number,
): KnownError {
  const total = (of: typeof vowels) => of.reduce((sum, { weight }) => sum + weight, 0);
  const among = (truth: boolean) => vowels.filter((vowel) => vowel.truth === truth);
  const sensitivity = weightedShare(among(true), (vowel) => vowel.devoiced, level);
  const specificity = weightedShare(among(false), (vowel) => !vowel.devoiced, level);
  const all = total(vowels);
  const hit = total(vowels.filter((vowel) => vowel.devoiced && vowel.truth)) / all;
  const right = total(vowels.filter((vowel) => !vowel.devoiced && !vowel.truth)) / all;
  const truly = total(among(true)) / all;
  const called = total(vowels.filter(({ devoiced }) => devoiced)) / all;
  const chance = truly * called + (1 - truly) * (1 - called);
  return {
    sensitivity,
    specificity,
    f1: truly > 0 ? (2 * hit) / (truly + called) : null,
    kappa: vowels.length === 0 || chance === 1 ? null : (hit + right - chance) / (1 - chance),
    calibrationError: null,
  };
}

function weightedShare<V extends { readonly weight: number }>(
  vowels: readonly V[],
  right: (vowel: V) => boolean,
  level: number,
): Share | null {
  if (vowels.length === 0) return null;
  let [sum, squares, correct] = [0, 0, 0];
  for (const vowel of vowels) {
    sum += vowel.weight;
    squares += vowel.weight ** 2;
    if (right(vowel)) correct += vowel.weight;
  }
  const of = sum ** 2 / squares;
  const share = correct / sum;
  return { of, share, interval: exactInterval(share * of, of, level) };
}
