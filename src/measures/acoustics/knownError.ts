import { exactInterval } from "../../statistics/exactInterval.ts";
import type { Interval } from "../../statistics/interval.ts";

/** One vowel judged twice: by the measure and by who knows (a person's mark, or the maker of the speech). */
export interface JudgedVowel {
  readonly devoiced: boolean;
  readonly truth: boolean;
  readonly probability: number;
}

export interface Share {
  readonly of: number;
  readonly share: number;
  readonly interval: Interval;
}

/** How often the decision errs, against marks that are not its own. */
export interface KnownError {
  /** Truly devoiced vowels that are called devoiced. */
  readonly sensitivity: Share | null;
  /** Truly voiced vowels that are called voiced. */
  readonly specificity: Share | null;
  /** Harmonic mean of sensitivity and precision, 0 … 1; null without devoiced vowels. */
  readonly f1: number | null;
  /** Cohen's kappa (1960, Educ. Psychol. Meas. 20:37–46); null when all is of one kind. */
  readonly kappa: number | null;
  /** Mean distance of stated probability and found share over ten bins of equal width, weighted by tokens, 0 … 1. */
  readonly calibrationError: number | null;
}

const bins = 10;

/** Error of the devoicing decision with exact 95 % intervals (Clopper & Pearson 1934) that treat tokens as independent. */
export function knownError(vowels: readonly JudgedVowel[], level = 0.95): KnownError {
  const count = (devoiced: boolean, truth: boolean) =>
    vowels.filter((v) => v.devoiced === devoiced && v.truth === truth).length;
  const hit = count(true, true);
  const miss = count(false, true);
  const alarm = count(true, false);
  const right = count(false, false);
  return {
    sensitivity: share(hit, hit + miss, level),
    specificity: share(right, right + alarm, level),
    f1: hit + miss === 0 ? null : (2 * hit) / (2 * hit + miss + alarm),
    kappa: kappa(hit, miss, alarm, right),
    calibrationError: calibrationError(vowels),
  };
}

function share(successes: number, of: number, level: number): Share | null {
  return of === 0 ? null : { of, share: successes / of, interval: exactInterval(successes, of, level) };
}

function kappa(hit: number, miss: number, alarm: number, right: number): number | null {
  const n = hit + miss + alarm + right;
  const chance = ((hit + miss) * (hit + alarm) + (right + alarm) * (right + miss)) / n ** 2;
  return n === 0 || chance === 1 ? null : ((hit + right) / n - chance) / (1 - chance);
}

function calibrationError(vowels: readonly JudgedVowel[]): number | null {
  if (vowels.length === 0) return null;
  const stated = new Float64Array(bins);
  const found = new Float64Array(bins);
  for (const { probability, truth } of vowels) {
    const bin = Math.min(bins - 1, Math.floor(probability * bins));
    stated[bin]! += probability;
    if (truth) found[bin]! += 1;
  }
  let sum = 0;
  for (let b = 0; b < bins; b++) sum += Math.abs(stated[b]! - found[b]!);
  return sum / vowels.length;
}
