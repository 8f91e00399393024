import type { Phone } from "../../phonology/phones.ts";

/** An interval of the results with what was heard of it. Times in ms from the start of the recording. */
export interface OwnInterval {
  /** A geminate carries the consonant it doubles. */
  readonly phone: Phone;
  /** `short`, `long`, `single`, `geminate`; null where unknown. */
  readonly length: string | null;
  readonly startMs: number;
  readonly endMs: number;
  /** End of a geminate's first part; null for all else. */
  readonly closureEndMs: number | null;
  /** What the measured decision says; null where the vowel was not heard, or is none. */
  readonly devoicedHeard: boolean | null;
}

/** A line of a reference label file. */
export interface ReferenceLabel {
  readonly phone: Phone;
  /** Mark of the label; null when its label set marks no vowel. */
  readonly devoiced: boolean | null;
  readonly startMs: number;
  readonly endMs: number;
}

/** One recording as the results and as the reference have it. */
export interface ComparedUtterance {
  readonly utterance: string;
  readonly own: readonly OwnInterval[];
  readonly reference: readonly ReferenceLabel[];
}
