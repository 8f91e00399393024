import type { Phone } from "../phonology/phones.ts";

export type Length = "short" | "long" | "single" | "geminate";

/** A phone with its times after long vowels and geminates were joined. Times in ms. */
export interface Interval {
  /** A geminate carries the consonant it doubles. */
  readonly phone: Phone;
  readonly kind: "vowel" | "consonant" | "pause";
  /** Null for a pause, for ん, and where nothing tells one long vowel from two vowels. */
  readonly length: Length | null;
  readonly lengthFrom: "reading" | "label" | null;
  /** First mora of the phone in the utterance, from 0; null for a pause. */
  readonly mora: number | null;
  readonly startMs: number;
  readonly endMs: number;
  /** Where the closure of a geminate ends; null for all else. */
  readonly closureEndMs: number | null;
  readonly devoiced: boolean | null;
  readonly accented: boolean | null;
  /** Whether the aligner says that the phone lasted at most this long; null where times are not its own. */
  readonly atFloor: boolean | null;
  /** Rough probability that both edges lie within 20 ms; null where times are not the aligner's own. */
  readonly confidence: number | null;
  /** Whether the aligner's variant without voice fitted better; null where times are not its own. No evidence. */
  readonly alignerDevoiced: boolean | null;
}
