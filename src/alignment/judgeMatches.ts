import type { MatchScore } from "./matchScore.ts";

/** Whether a recording fits its text, judged among the recordings it was aligned with. */
export interface MatchVerdict {
  /** `text`: the whole text seems to be of another recording; `stretch`: some part of it; null: it fits. */
  readonly mismatch: "text" | "stretch" | null;
  /** Robust deviations of the mean gap and of the worst stretch from the corpus's middle. */
  readonly gapDeviation: number;
  readonly worstDeviation: number;
}

/** Deviations (in scaled MADs) beyond which a recording is set aside. */
export interface MatchLimits {
  readonly text: number;
  readonly stretch: number;
}

/**
 * Chosen on synthetic reference speech and on real sentences with 5 % of the transcripts exchanged: of those 97–100 %
 * lie beyond, and at most 1.6 % of the right ones.
 */
export const defaultMatchLimits: MatchLimits = { text: 5, stretch: 7 };

/**
 * Verdicts for all recordings of one corpus and model. Gaps are compared with their median in units of the median
 * absolute deviation (times 1.4826, a standard deviation if they were normal), so up to half may be wrong.
 */
export function judgeMatches(
  matches: readonly MatchScore[],
  limits: MatchLimits = defaultMatchLimits,
): MatchVerdict[] {
  const gaps = matches.map(({ gap }) => gap);
  const worsts = matches.map(({ worst }) => worst.gap);
  const deviationOfGap = robustDeviation(gaps);
  const deviationOfWorst = robustDeviation(worsts);
  return matches.map((_, i) => {
    const gapDeviation = deviationOfGap(gaps[i]!);
    const worstDeviation = deviationOfWorst(worsts[i]!);
    const mismatch = gapDeviation > limits.text ? "text" : worstDeviation > limits.stretch ? "stretch" : null;
    return { mismatch, gapDeviation, worstDeviation };
  });
}

function robustDeviation(values: readonly number[]): (value: number) => number {
  const centre = median(values);
  const scale = 1.4826 * median(values.map((v) => Math.abs(v - centre)));
  return (value) => (scale > 0 ? (value - centre) / scale : value > centre ? Number.POSITIVE_INFINITY : 0);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const n = sorted.length;
  return n === 0 ? 0 : (sorted[(n - 1) >> 1]! + sorted[n >> 1]!) / 2;
}
