import type { AccentRelation } from "./accentConfound.ts";
import type { Chance } from "./devoicingTable.ts";
import type { LengthRatio } from "./lengthEvidence.ts";
import type { LexiconWord } from "./lexicon.ts";
import type { Target } from "./targets.ts";
import type { Part } from "./weights.ts";

/** Reasons to be careful with a word or pair, and how much of its cleanness each takes (common practice, no published source). */
export const confounds = {
  "accent-differs": { cost: 0.5, text: "the accents differ, so that pitch gives the words away" },
  "accent-unknown": { cost: 0.15, text: "accent unknown" },
  "other-devoiceable": { cost: 0.25, text: "another vowel may be devoiced too" },
  "many-homophones": { cost: 0.1, text: "many words sound like it" },
  "parts-of-speech-differ": { cost: 0.1, text: "the words are of different parts of speech" },
  "not-met": {
    cost: 0.15,
    text: "no vowel of exactly this environment was heard: the estimate is put together from its parts",
  },
} as const;
export type Confound = keyof typeof confounds;

/** A word, pair or triplet that may serve a target, with all that its score rests on. */
export interface Candidate {
  readonly target: Target;
  readonly words: readonly LexiconWord[];
  /** Index of the mora in question in each word; for an added mora where it is added. */
  readonly focus: readonly number[];
  /** Name of what is covered: environment of a vowel, or sound and place of a length contrast. */
  readonly environment: string;
  readonly c1: string;
  readonly c2: string;
  readonly chances: readonly Chance[];
  readonly ratios: readonly LengthRatio[];
  readonly accent: AccentRelation | null;
  readonly confounds: readonly Confound[];
  /** Speakers who said every word of it; 0 when one was never said. */
  readonly heardSpeakers: number;
  /** Fewest speakers behind its chances and ratios. */
  readonly evidenceSpeakers: number;
  readonly parts: Readonly<Record<Part, number | null>>;
  readonly score: number;
}
