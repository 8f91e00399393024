import { clusteredMean } from "../../statistics/clusteredMean.ts";
import { tMultiplier } from "../../statistics/distributions.ts";
import type { Interval } from "../../statistics/interval.ts";

/** Mean over speakers, each counting the same; bounds are null for fewer than two. */
export interface SpeakerMean {
  readonly estimate: number;
  readonly low: Interval["low"] | null;
  readonly high: Interval["high"] | null;
  readonly speakers: number;
}

/** Mean of one value a speaker with its t interval; null without speakers. */
export function speakerMean(values: readonly number[], level: number): SpeakerMean | null {
  if (values.length === 0) return null;
  if (values.length === 1) return { estimate: values[0]!, low: null, high: null, speakers: 1 };
  const even = values.map(() => 1);
  const { estimate, variance, df } = clusteredMean({ values, weights: even, within: values.map(() => 0) });
  const half = tMultiplier(level, df) * Math.sqrt(variance);
  return { estimate, low: estimate - half, high: estimate + half, speakers: values.length };
}
