import type { Basis } from "../../basis.ts";
import type { DecisionAccuracy } from "../../estimates/correctedRate.ts";
import type { Dim } from "../../estimates/dimensions.ts";
import type { Interval } from "../../statistics/interval.ts";

/** One dataset and one labelling of it: what is never pooled with another. */
export interface Corpus {
  readonly dataset: string;
  readonly labelSet: string;
}

/** What one corpus, or one environment or speaker in it, says about a rule's contrast. */
export interface Reading extends Corpus {
  /** The column and value that narrow it; null for the whole corpus. */
  readonly part: { readonly column: Dim; readonly value: string } | null;
  readonly basis: Basis;
  /** False for marks that a text rule wrote: they are not evidence, and nothing else here is filled. */
  readonly evidence: boolean;
  /** Share, difference of shares, or ratio; null when it cannot be estimated. */
  readonly estimate: number | null;
  /** The interval as estimated; null with the estimate. */
  readonly interval: Interval | null;
  /** The interval that may judge: opened and widened for what an aligner's floor hides. */
  readonly judged: Interval | null;
  /** Which side of the true value the estimate is known to lie on, when an aligner's floor hides the other. */
  readonly bound: "at least" | "at most" | null;
  /** Tokens of each cut compared: one entry for a rate, two for the others. */
  readonly tokens: readonly number[];
  readonly speakers: number;
  /** Estimates of each cut: rates, or geometric means in ms; null where there is none. */
  readonly sides: readonly (number | null)[];
  /** Which of several compared quantities decided, in words; null where there is one only. */
  readonly detail?: string | null;
  /** Why there is no estimate although there are tokens; null when there is one, or when durations do not allow it. */
  readonly reason: string | null;
  readonly method: string;
  readonly warnings: readonly string[];
}

/** How contrasts are read. */
export interface ReadOptions {
  /** Confidence level, 0 to 1. */
  readonly level: number;
  /** How reliable devoicing decisions of basis `measured` are; rates are then corrected for their errors. */
  readonly accuracy?: DecisionAccuracy | undefined;
  /** The rule speaks of these very words, so that their interval allows for speakers only. Default false. */
  readonly theseWords?: boolean;
}

export function corpusKey({ dataset, labelSet }: Corpus): string {
  return `${dataset}\u0000${labelSet}`;
}
