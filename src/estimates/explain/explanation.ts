import type { Basis } from "../../basis.ts";

/** A value with its interval; a bound is null where the data say nothing about it. */
export interface Bounded {
  readonly estimate: number;
  readonly low: number | null;
  readonly high: number | null;
}

/** What one level (against a reference) or one unit more of a number does, all else in the model held equal. */
export interface Effect {
  readonly term: string;
  /** Null for a number: the effect is per `unit`. */
  readonly level: string | null;
  readonly reference: string | null;
  readonly unit: string | null;
  /** Odds ratio of devoicing, or ratio of durations; null where it is withheld. */
  readonly ratio: Bounded | null;
  /** Average marginal effect on the rate, percentage points; null for durations and where it is withheld. */
  readonly percentagePoints: Bounded | null;
  /** Of the hypothesis that there is no effect; adjusted for all effects of the model (Benjamini–Hochberg). */
  readonly p: number | null;
  readonly pAdjusted: number | null;
  /** Vowels at this level; all vowels for a number. */
  readonly tokens: number;
  /**
   * The same among all vowels that the explanation speaks of, with those that the models leave out (see
   * `Explanation.leftOut`). Absent: of an older version.
   */
  readonly tokensInAll?: number;
  readonly speakers: number;
  /** How many of them are devoiced; null for durations. */
  readonly devoiced: number | null;
  /**
   * Why no effect is given: the level or its reference rests on too `few` vowels, speakers or vowels of one outcome, or
   * with other terms tells the outcome of some vowels without exception (`separated`). Null when it is given.
   */
  readonly withheld: "few" | "separated" | null;
}

/** How much of the variation that the terms leave lies between speakers, between words, and in the single vowel. */
export interface VarianceShare {
  readonly of: string;
  readonly groups: number | null;
  readonly standardDeviation: number;
  /** 0 to 1; the shares of a model sum to 1. */
  readonly share: number;
}

export interface Model {
  /** `clustered`: one regression, errors clustered; `mixed`: random intercepts. */
  readonly kind: "clustered" | "mixed";
  readonly status: "ok" | "not converged" | "cannot be estimated";
  /** Why there are no effects; null when the status is ok. */
  readonly reason: string | null;
  readonly method: string;
  readonly effects: readonly Effect[];
  readonly variance: readonly VarianceShare[];
  readonly warnings: readonly string[];
}

/** A level of which none or all vowels are devoiced: its odds ratio has no bound, so it is reported by its rate. */
export interface SeparatedLevel {
  readonly term: string;
  readonly level: string;
  readonly tokens: number;
  readonly devoiced: number;
}

/** Vowels that the models leave out: their `term` is unknown; null: they belong to a level that was set aside. */
export interface LeftOut {
  readonly term: string | null;
  readonly tokens: number;
}

/** What explains an outcome in one dataset and label set. */
export interface Explanation {
  readonly outcome: "devoicing" | "duration";
  readonly dataset: string;
  readonly labelSet: string;
  readonly basis: Basis | null;
  readonly level: number;
  /** Which tokens are looked at, in words. */
  readonly population: string;
  readonly tokens: number;
  readonly speakers: number;
  readonly words: number | null;
  /** Share devoiced, or geometric mean duration in ms; null where there is nothing to count. */
  readonly average: number | null;
  /** Null when models were tried; else why not. */
  readonly reason: string | null;
  readonly separated: readonly SeparatedLevel[];
  /** With the vowels that the models count these make up `tokens`. Absent: of an older version. */
  readonly leftOut?: readonly LeftOut[];
  readonly models: readonly Model[];
  readonly warnings: readonly string[];
}

/** Not finite becomes null: nothing that is not a number may reach a page. */
export function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
