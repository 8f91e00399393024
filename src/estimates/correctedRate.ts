import type { Interval } from "../statistics/interval.ts";
import { wilsonInterval } from "../statistics/wilsonInterval.ts";

/** How often a decision was right where the truth is known: `correct` of `of`. */
export interface Hits {
  readonly correct: number;
  readonly of: number;
}

/** Tested against vowels whose voicing a person has judged. */
export interface DecisionAccuracy {
  /** Truly devoiced vowels that the decision calls devoiced. */
  readonly sensitivity: Hits;
  /** Truly voiced vowels that it calls voiced. */
  readonly specificity: Hits;
}

export interface CorrectedRate extends Interval {
  readonly estimate: number;
  /** Before it was kept inside 0 and 1; far outside means that the accuracy does not fit this corpus. */
  readonly unclipped: number;
}

/**
 * True devoicing rate behind a rate found by an imperfect decision: (p + specificity − 1) / (sensitivity + specificity
 * − 1). Source: Rogan W. J. & Gladen B. (1978) Am. J. Epidemiol. 107:71–76. The interval combines those of the rate
 * (clustered, as given) and of the two accuracies (Wilson) by how far each alone moves the result: Zou G. Y. & Donner
 * A. (2008) Stat. Med. 27:1693–1702. Null where the decision is not surely better than chance.
 */
export function correctedRate(
  rate: { readonly estimate: number } & Interval,
  { sensitivity, specificity }: DecisionAccuracy,
  level: number,
): CorrectedRate | null {
  if (!(sensitivity.of > 0 && specificity.of > 0)) return null;
  const [se, sp] = [sensitivity.correct / sensitivity.of, specificity.correct / specificity.of];
  const seRange = wilsonInterval(sensitivity.correct, sensitivity.of, level);
  const spRange = wilsonInterval(specificity.correct, specificity.of, level);
  if (seRange.low + spRange.low <= 1) return null;

  const truth = (p: number, se: number, sp: number) => (p + sp - 1) / (se + sp - 1);
  const centre = truth(rate.estimate, se, sp);
  const moves = [
    [truth(rate.low, se, sp), truth(rate.high, se, sp)],
    [truth(rate.estimate, seRange.low, sp), truth(rate.estimate, seRange.high, sp)],
    [truth(rate.estimate, se, spRange.low), truth(rate.estimate, se, spRange.high)],
  ] as const;
  const down = Math.hypot(...moves.map((pair) => centre - Math.min(centre, ...pair)));
  const up = Math.hypot(...moves.map((pair) => Math.max(centre, ...pair) - centre));
  const inside = (value: number) => Math.min(1, Math.max(0, value));
  return {
    estimate: inside(centre),
    unclipped: centre,
    low: inside(centre - down),
    high: inside(centre + up),
  };
}
