import type { Basis } from "../../basis.ts";
import type { Dim } from "../../estimates/dimensions.ts";
import type { Place, Scale } from "./region.ts";
import type { Holds, JudgedRule, RuleContrast } from "./ruleSchema.ts";

/**
 * What a corpus says about a rule. Decided by where the whole interval lies, never by a p-value.
 *
 * - `borne out`: the interval lies where the rule says.
 * - `borne out in part`: so it does in some environments or for some speakers only; they are named.
 * - `contradicted`: the interval lies where the rule does not hold.
 * - `too small to matter`: there is enough evidence, and what the rule claims is at most negligible.
 * - `undecided`: enough sounds and speakers, but the interval allows both.
 * - `too little evidence`: fewer sounds or speakers than the rule asks for.
 * - `not measurable`: the corpus cannot speak about it; `reason` says why.
 */
export const verdicts = [
  "borne out",
  "borne out in part",
  "contradicted",
  "too small to matter",
  "undecided",
  "too little evidence",
  "not measurable",
] as const;
export type Verdict = (typeof verdicts)[number];

/** An environment or a speaker with enough tokens to be judged alone, at a level adjusted for looking at many. */
export interface JudgedPart {
  readonly column: Dim;
  readonly value: string;
  readonly place: Place;
  readonly estimate: number;
  /** Null where an aligner's floor leaves it open. */
  readonly low: number | null;
  readonly high: number | null;
  readonly tokens: readonly number[];
  readonly speakers: number;
}

export interface JudgedParts {
  /** Confidence level of each part's interval: so strict that all of them together keep the rule's level. */
  readonly level: number;
  readonly judged: number;
  readonly holding: readonly JudgedPart[];
  readonly failing: readonly JudgedPart[];
}

/** One sound of the corpus, shown beside a verdict. */
export interface ExampleSound {
  readonly speaker: string;
  readonly utterance: string;
  /** Row of the intervals of the utterance and label set. */
  readonly index: number;
  readonly phone: string;
  readonly before: string;
  readonly after: string;
  /** Null where words are unknown. */
  readonly word: string | null;
  readonly startMs: number;
  readonly endMs: number;
  /** `devoiced`, `voiced`, `long` or `doubled`; null where the rule compares other sounds. */
  readonly shows: string | null;
  /** What makes it clear: probability of being devoiced (null where only marked), or duration by the speaker's own mean. */
  readonly value: number | null;
}

export interface VerdictExamples {
  /** What makes an example clear. */
  readonly by: "probability" | "ratio" | null;
  readonly clearest: readonly ExampleSound[];
  readonly mostContrary: readonly ExampleSound[];
  /** Why there are none; null when they were looked for. */
  readonly reason: string | null;
}

/** Verdict on one rule by one corpus; sounds with marks or times of another basis are judged apart. */
export interface RuleVerdict {
  readonly rule: string;
  readonly statement: { readonly en: string; readonly ja?: string | undefined };
  /** What its author wants to be read beside it; null when nothing. */
  readonly note: string | null;
  /** Where the rule comes from, in words, with how far the source was seen. */
  readonly source: string;
  readonly dataset: string;
  readonly labelSet: string;
  readonly verdict: Verdict;
  /** Where the interval of the whole corpus lies; null without a judgement. */
  readonly place: Place | null;
  /** One or two plain sentences for people. */
  readonly sentence: string;
  /** Why there is no judgement; null when there is one. */
  readonly reason: string | null;
  /** What the rule compares and how much it asks for, so that the sentence can be told in another language; null where it only needs something. */
  readonly asked: Pick<JudgedRule, "contrast" | "least"> | null;
  readonly kind: RuleContrast["kind"] | "needs";
  /** Unit of the numbers: shares and differences of shares (0 to 1), or ratios. */
  readonly scale: Scale | null;
  readonly holds: Holds | null;
  readonly estimate: number | null;
  /** Interval that was judged; null where an aligner's floor leaves a side open, or there is none. */
  readonly low: number | null;
  readonly high: number | null;
  /** Set where the estimate itself is a bound. */
  readonly bound: "at least" | "at most" | null;
  readonly level: number;
  readonly sides: readonly (number | null)[];
  /** Which of several compared quantities decided, in words ("/i/ and /e/"); null where there is one only. */
  readonly detail: string | null;
  readonly tokens: readonly number[];
  readonly speakers: number;
  readonly words: null;
  readonly scope: "speakers" | "one speaker";
  readonly basis: Basis | null;
  readonly method: string | null;
  readonly warnings: readonly string[];
  readonly environments: JudgedParts | null;
  readonly bySpeaker: JudgedParts | null;
  /** Environments that speak most clearly for the rule and most clearly against it, up to three each. */
  readonly clearest: readonly JudgedPart[];
  readonly mostContrary: readonly JudgedPart[];
  /** Null where single sounds were not at hand or there was no judgement. */
  readonly examples: VerdictExamples | null;
}
