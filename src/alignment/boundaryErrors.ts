import { isVowel, type Phone, phoneTable } from "../phonology/phones.ts";
import type { AlignedPhone } from "./alignUtterance.ts";

/** A phone with its times as somebody else gives them. */
export interface ReferencePhone {
  readonly phone: Phone;
  readonly devoiced: boolean;
  readonly startMs: number;
  readonly endMs: number;
}

/** One boundary: our time minus the reference's. Kinds are those of `soundKind`. */
export interface BoundaryError {
  /** Kinds of the phones on either side by the reference, which knows what was devoiced. */
  readonly left: SoundKind;
  readonly right: SoundKind;
  /** The same by our own alignment. */
  readonly ownLeft: SoundKind;
  readonly ownRight: SoundKind;
  readonly errorMs: number;
  readonly referenceMs: number;
}

export const soundKinds = [
  "vowel",
  "devoiced vowel",
  "sonorant",
  "voiced obstruent",
  "fricative",
  "voiceless stop",
  "pause",
] as const;
/** Sounds whose edges look alike; affricates and ッ count as voiceless stops before them, as fricatives after them. */
export type SoundKind = (typeof soundKinds)[number];

/** Kind of a sound at its start (`side` "right" of a boundary) or at its end ("left"). */
export function soundKind(phone: Phone, devoiced: boolean, side: "left" | "right"): SoundKind {
  const { manner, voiced } = phoneTable[phone];
  if (manner === "pause") return "pause";
  if (isVowel(phone)) return devoiced ? "devoiced vowel" : "vowel";
  if (manner === "nasal" || manner === "liquid" || manner === "approximant") return "sonorant";
  if (voiced) return "voiced obstruent";
  if (manner === "affricate") return side === "right" ? "voiceless stop" : "fricative";
  return manner === "fricative" ? "fricative" : "voiceless stop";
}

interface Joined {
  phone: Phone;
  devoiced: boolean;
  startMs: number;
  endMs: number;
}

/** Equal phones in a row become one: the sound between them holds no boundary. */
export function joinEqual(phones: readonly ReferencePhone[]): Joined[] {
  const joined: Joined[] = [];
  for (const { phone, devoiced, startMs, endMs } of phones) {
    const last = joined.at(-1);
    if (last?.phone === phone) last.endMs = endMs;
    else joined.push({ phone, devoiced, startMs, endMs });
  }
  return joined;
}

/** An alignment in the reference's terms. */
export function asReference(phones: readonly AlignedPhone[]): ReferencePhone[] {
  return phones.map(({ phone, variant, startMs, endMs }) => ({
    phone,
    devoiced: variant === "devoiced",
    startMs,
    endMs,
  }));
}

/**
 * Errors of every boundary of the reference, between phones and at pauses; pauses that only one side has are passed
 * over. Null when the phones themselves differ: then the times cannot be compared.
 */
export function boundaryErrors(
  own: readonly AlignedPhone[],
  reference: readonly ReferencePhone[],
): BoundaryError[] | null {
  const all = joinEqual(reference);
  const mine = joinEqual(asReference(own)).filter(({ phone }) => phone !== "pause");
  const errors: BoundaryError[] = [];
  let at = 0;
  let previous: Joined | null = null;
  for (const span of mine) {
    while (all[at]?.phone === "pause") at++;
    const theirs = all[at];
    if (theirs?.phone !== span.phone) return null;
    const before = all[at - 1];
    const after = all[at + 1];
    const ownBefore = before?.phone === "pause" || !previous ? null : previous;
    if (before) errors.push(errorAt(before, theirs, ownBefore ?? before, span, span.startMs, theirs.startMs));
    if (after?.phone === "pause") errors.push(errorAt(theirs, after, span, after, span.endMs, theirs.endMs));
    previous = span;
    at++;
  }
  return all.slice(at).some(({ phone }) => phone !== "pause") ? null : errors;
}

function errorAt(
  left: Joined,
  right: Joined,
  ownLeft: Joined,
  ownRight: Joined,
  ownMs: number,
  referenceMs: number,
): BoundaryError {
  return {
    left: soundKind(left.phone, left.devoiced, "left"),
    right: soundKind(right.phone, right.devoiced, "right"),
    ownLeft: soundKind(ownLeft.phone, ownLeft.devoiced, "left"),
    ownRight: soundKind(ownRight.phone, ownRight.devoiced, "right"),
    errorMs: ownMs - referenceMs,
    referenceMs,
  };
}
