import type { AlignedPhone } from "../../../src/alignment/alignUtterance.ts";
import { isVowel, type Phone, phoneTable } from "../../../src/phonology/phones.ts";
import type { TrueSpan } from "./material.ts";

/** One boundary: own time minus true time. `left` and `right` are phones, in upper case where devoiced in truth. */
export interface BoundaryError {
  readonly left: string;
  readonly right: string;
  readonly errorMs: number;
  readonly trueMs: number;
}

interface Joined {
  phone: string;
  startMs: number;
  endMs: number;
}

/** Equal vowels in a row become one: no boundary between them is judged. */
export function joinEqual(spans: readonly { phone: string; startMs: number; endMs: number }[]): Joined[] {
  const joined: Joined[] = [];
  for (const { phone, startMs, endMs } of spans) {
    const last = joined.at(-1);
    if (last && last.phone.toLowerCase() === phone.toLowerCase()) last.endMs = endMs;
    else joined.push({ phone, startMs, endMs });
  }
  return joined;
}

/** Errors of all true boundaries between phones, and between phones and pauses. Null when the phones differ. */
export function boundaryErrors(
  own: readonly Pick<AlignedPhone, "phone" | "startMs" | "endMs">[],
  truth: readonly TrueSpan[],
): BoundaryError[] | null {
  const all = joinEqual(truth);
  const mine = joinEqual(own).filter(({ phone }) => phone !== "pause");
  const theirs = all.filter(({ phone }) => phone !== "pause");
  if (mine.length !== theirs.length) return null;
  const errors: BoundaryError[] = [];
  let at = 0;
  for (let i = 0; i < mine.length; i++) {
    const span = mine[i]!;
    const reference = theirs[i]!;
    if (span.phone !== reference.phone.toLowerCase() && span.phone !== reference.phone) return null;
    while (all[at] !== reference) at++;
    const before = all[at - 1];
    const after = all[at + 1];
    if (before)
      errors.push({
        left: before.phone,
        right: reference.phone,
        errorMs: span.startMs - reference.startMs,
        trueMs: reference.startMs,
      });
    if (after?.phone === "pause")
      errors.push({
        left: reference.phone,
        right: "pause",
        errorMs: span.endMs - reference.endMs,
        trueMs: reference.endMs,
      });
  }
  return errors;
}

const isDevoiced = (phone: string) => phone === "I" || phone === "U";

/** Kind of sound for the table by class. */
export function kindOf(phone: string): string {
  if (isDevoiced(phone)) return "devoiced";
  const { manner, voiced } = phoneTable[phone as Phone];
  if (isVowel(phone) || manner === "pause") return manner;
  if (manner === "nasal" || manner === "liquid" || manner === "approximant") return "sonorant";
  if (voiced) return "voiced obstruent";
  return manner === "stop" || manner === "geminate" ? "voiceless stop" : "fricative";
}

/** The classes that targets speak of. */
export const classTests: Readonly<Record<string, (error: BoundaryError) => boolean>> = {
  all: () => true,
  "phone to phone": ({ left, right }) => ![left, right].some((p) => p === "pause" || isDevoiced(p)),
  "out of a pause": ({ left }) => left === "pause",
  "into a pause": ({ right }) => right === "pause",
  "pause edges": ({ left, right }) => left === "pause" || right === "pause",
  "into a devoiced vowel": ({ right }) => isDevoiced(right),
  "out of a devoiced vowel": ({ left }) => isDevoiced(left),
};

export interface Summary {
  readonly n: number;
  readonly medianMs: number;
  readonly biasMs: number;
  readonly within10: number;
  readonly within20: number;
  readonly within50: number;
}

/** Shares in %. `biasMs` is the median of the signed errors; `offsetMs` is taken off every error first. */
export function summarise(errors: readonly BoundaryError[], offsetMs = 0): Summary {
  const signed = errors.map(({ errorMs }) => errorMs - offsetMs).sort((a, b) => a - b);
  const absolute = signed.map(Math.abs).sort((a, b) => a - b);
  const share = (ms: number) => (100 * absolute.filter((e) => e <= ms + 1e-6).length) / absolute.length;
  const middle = (sorted: readonly number[]) => sorted[sorted.length >> 1] ?? Number.NaN;
  return {
    n: errors.length,
    medianMs: middle(absolute),
    biasMs: middle(signed),
    within10: share(10),
    within20: share(20),
    within50: share(50),
  };
}
