import type { Basis } from "../basis.ts";

/** How a sound was spoken, as far as anything but a rule tells: `unknown` where nothing does. */
export type CardVoicing = "voiced" | "devoiced" | "unknown";

/** A phone, or the closure of a geminate, within its mora; `voicing` is null for consonants. */
export interface CardPart {
  readonly phone: string;
  readonly startMs: number;
  readonly endMs: number;
  readonly voicing: CardVoicing | null;
  /** Whether it belongs to the token that the card is about. */
  readonly own: boolean;
}

/** A mora of the row (two where one long vowel fills both); `kana` falls back on IPA where the reading is unknown. */
export interface CardMora {
  readonly kana: string;
  readonly inKana: boolean;
  readonly startMs: number;
  readonly endMs: number;
  readonly parts: readonly CardPart[];
}

/** What was decided about a vowel's voice. `probability` that it is devoiced is null where a label alone decided. */
export interface CardDecision {
  readonly devoiced: boolean;
  readonly probability: number | null;
  readonly basis: Basis;
}

export interface CardToken {
  readonly phone: string;
  readonly kind: "vowel" | "consonant";
  /** short, long, single or geminate; null where unknown or outside the contrast. */
  readonly length: string | null;
  readonly before: string;
  readonly after: string;
  readonly word: string | null;
  readonly durationMs: number;
  /** Uncertainty of the duration, one standard deviation; null when not measured. */
  readonly durationErrorMs: number | null;
  readonly timeBasis: string;
  readonly atFloor: boolean;
  /** Null for a consonant, and for a vowel nobody heard. */
  readonly decision: CardDecision | null;
  /** Whether a person marked it devoiced; null without such a mark. */
  readonly markedDevoiced: boolean | null;
  /** Voice that is the vowel's own, as in the column `voicedMs`; null when not measured. */
  readonly voicedMs: number | null;
  /** Why there are no acoustic measures, as in the column `measureReason`; null when they are there. */
  readonly measureReason: string | null;
}

/** Probability of voice from `fromMs` on, one value each `stepMs`, 0 to 1. */
export interface CardVoice {
  readonly fromMs: number;
  readonly stepMs: number;
  readonly probability: Float32Array;
}

/** Levels in dB, one row after the other, the lowest frequencies first. */
export interface CardSpectrum {
  readonly columns: number;
  readonly rows: number;
  readonly levelsDb: Float32Array;
}

/** All that a card shows; times in ms from the start of the utterance's recording. */
export interface TokenCard {
  readonly dataset: string;
  readonly utterance: string;
  readonly speaker: string;
  readonly fromMs: number;
  readonly toMs: number;
  readonly morae: readonly CardMora[];
  readonly token: CardToken;
  /** From C1's release to C2's onset, where voice was looked for; null for consonants and without a recording. */
  readonly stretch: { readonly fromMs: number; readonly toMs: number } | null;
  readonly voice: CardVoice | null;
  readonly spectrum: CardSpectrum | null;
}
