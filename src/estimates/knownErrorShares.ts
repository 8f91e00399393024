import { normalMultiplier } from "../statistics/distributions.ts";
import type { Interval } from "../statistics/interval.ts";
import { clusteredRate, type RateEstimate } from "./clusteredRate.ts";
import type { DecisionAccuracy, Hits } from "./correctedRate.ts";

/** One vowel judged twice. */
export interface Judged {
  readonly speaker: string;
  readonly heard: boolean;
  readonly truth: boolean;
  /** Stated probability that it is devoiced; NaN when missing. */
  readonly probability: number;
}

/** Share of vowels judged rightly, interval clustered by speaker. */
export interface RightShare extends Interval {
  readonly estimate: number;
  readonly correct: number;
  readonly of: number;
}

export interface CalibrationBin extends Interval {
  /** Bounds of the stated probabilities. */
  readonly from: number;
  readonly to: number;
  readonly tokens: number;
  /** Mean stated probability. */
  readonly stated: number;
  /** Share that is truly devoiced, interval clustered by speaker. */
  readonly found: number;
}

/** Share of vowels whose decision agrees with the truth; null without vowels. */
export function rightShare(
  vowels: readonly Judged[],
  level: number,
): { readonly share: RightShare; readonly rate: RateEstimate; readonly speakers: number } | null {
  if (vowels.length === 0) return null;
  const { of, hits } = bySpeaker(vowels, ({ heard, truth }) => heard === truth);
  const rate = clusteredRate(of, hits, level);
  const { estimate, low, high } = rate;
  const correct = hits.reduce((sum, value) => sum + value, 0);
  return { share: { estimate, low, high, correct, of: vowels.length }, rate, speakers: of.length };
}

/** Stated probability against found share in ten bins of equal width. */
export function calibrationOf(vowels: readonly Judged[], level: number): CalibrationBin[] {
  const bins = Array.from({ length: 10 }, (): Judged[] => []);
  for (const vowel of vowels)
    if (vowel.probability >= 0 && vowel.probability <= 1)
      bins[Math.min(9, Math.floor(10 * vowel.probability))]!.push(vowel);
  return bins.flatMap((own, bin) => {
    if (own.length === 0) return [];
    const { of, hits } = bySpeaker(own, ({ truth }) => truth);
    const { estimate: found, low, high } = clusteredRate(of, hits, level);
    const stated = own.reduce((sum, { probability }) => sum + probability, 0) / own.length;
    return [{ from: bin / 10, to: (bin + 1) / 10, tokens: own.length, stated, found, low, high }];
  });
}

/** Hits for `correctedRate`, of so many tokens that its Wilson intervals are as wide as the clustered ones. */
export function accuracyOf(
  sensitivity: RightShare | null,
  specificity: RightShare | null,
  level: number,
): DecisionAccuracy | null {
  if (sensitivity === null || specificity === null) return null;
  return { sensitivity: effectiveHits(sensitivity, level), specificity: effectiveHits(specificity, level) };
}

/**
 * Tokens n at which Wilson's interval has the width w of the given one: with p(1 − p) = v, n solves
 * w²(n + z²)² = z²(4vn + z²), a quadratic in n + z². Never more than the tokens there are.
 */
function effectiveHits({ estimate, low, high, of }: RightShare, level: number): Hits {
  const z2 = normalMultiplier(level) ** 2;
  const v = estimate * (1 - estimate);
  const w2 = (high - low) ** 2;
  const root = Math.sqrt(4 * v * v * z2 * z2 + w2 * z2 * z2 * (1 - 4 * v));
  const effective = w2 > 0 ? (2 * v * z2 + root) / w2 - z2 : of;
  const n = Math.min(of, Math.max(1, effective));
  return { correct: estimate * n, of: n };
}

function bySpeaker(vowels: readonly Judged[], hit: (vowel: Judged) => boolean) {
  const place = new Map<string, number>();
  const of: number[] = [];
  const hits: number[] = [];
  for (const vowel of vowels) {
    const k = place.get(vowel.speaker) ?? of.push(0) - 1;
    place.set(vowel.speaker, k);
    of[k]! += 1;
    hits[k] = (hits[k] ?? 0) + (hit(vowel) ? 1 : 0);
  }
  return { of, hits };
}
