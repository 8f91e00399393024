import type { Phone } from "../phonology/phones.ts";

/** One line of a label file, in the project's phone set. Times in ms from the start of the recording. */
export interface LabelPhone {
  readonly phone: Phone;
  /** The label itself marks the vowel as long (`a:`). */
  readonly long: boolean;
  /** The label marks the vowel as devoiced (upper case). */
  readonly devoiced: boolean;
  readonly startMs: number;
  readonly endMs: number;
  /**
   * Whether the mora carries the accent nucleus, as a full-context label tells it; null where it does not.
   * The last mora of an accent phrase stays null: such labels write a flat word like one accented there.
   */
  readonly accented: boolean | null;
  readonly line: number;
  /** What the project's own aligner says of its times; absent for phones read from a file. */
  readonly aligned?: {
    readonly atFloor: boolean;
    readonly confidence: number;
    /** The variant without voice fitted better. A help to alignment, never evidence. */
    readonly devoiced: boolean;
    /** Two equal vowels that are no long vowel, between which no boundary can be heard. */
    readonly twoVowels: boolean;
  };
}

/** Something wrong with a line. `fatal` when the file cannot be used because of it. */
export interface LabelProblem {
  readonly line: number;
  readonly rule: string;
  readonly message: string;
  readonly wayOut: string;
  readonly fatal: boolean;
}

export interface LabelReading {
  readonly phones: readonly LabelPhone[];
  readonly problems: readonly LabelProblem[];
}
