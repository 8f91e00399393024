import type { Mora } from "../phonology/kana.ts";
import { isPause, isVowel, type Phone } from "../phonology/phones.ts";
import type { Interval, Length } from "./interval.ts";
import type { LabelPhone } from "./labelPhone.ts";

/** What is known about a label set beside its lines. */
export interface IntervalContext {
  /** The morae of the reading; null when there is none or it does not fit the label. */
  readonly morae: readonly Mora[] | null;
  /** For each label phone that is no pause, its mora; null exactly when `morae` is. */
  readonly moraOfPhone: readonly number[] | null;
  /** Accent by mora from the reading; null when the reading tells none. */
  readonly accentOfMora: readonly (boolean | null)[] | null;
  /** The label set writes long vowels with a mark of their own, so that an unmarked vowel is short. */
  readonly marksLength: boolean;
  /** The label set says of each vowel whether it is devoiced. */
  readonly marksDevoicing: boolean;
}

/**
 * Joins the phones of a label file into intervals: vowels that the reading writes as one long vowel, a closure with
 * the consonant it lengthens, neighbouring pauses. The intervals cover the same time in the same order.
 */
export function toIntervals(phones: readonly LabelPhone[], context: IntervalContext): Interval[] {
  const intervals: Interval[] = [];
  let mora = 0;
  let spoken = 0;
  for (let i = 0; i < phones.length; ) {
    const first = phones[i]!;
    const pause = isPause(first.phone);
    const taken = pause
      ? pauseFrom(phones, i)
      : isVowel(first.phone)
        ? vowelFrom(phones, i, spoken, context)
        : consonantFrom(phones, i);
    const { kind, length, count } = taken;
    const { atFloor, confidence } = sureness(phones, i, count);
    intervals.push({
      phone: taken.phone,
      kind,
      length,
      lengthFrom: taken.lengthFrom,
      mora: pause ? null : (context.moraOfPhone?.[spoken] ?? mora),
      startMs: first.startMs,
      endMs: phones[i + count - 1]!.endMs,
      closureEndMs: length === "geminate" ? first.endMs : null,
      devoiced: kind === "vowel" && context.marksDevoicing ? first.devoiced : null,
      accented: pause ? null : accentOf(first, spoken, context),
      atFloor,
      confidence,
      alignerDevoiced: kind === "vowel" ? (first.aligned?.devoiced ?? null) : null,
    });
    mora += taken.morae;
    if (!pause) spoken += count;
    i += count;
  }
  return intervals;
}

const unsaid = { atFloor: null, confidence: null };

/** Of joined phones: at the floor when all of them are, as sure as the least sure. */
function sureness(
  phones: readonly LabelPhone[],
  from: number,
  count: number,
): Pick<Interval, "atFloor" | "confidence"> {
  if (phones[from]!.aligned === undefined) return unsaid;
  let atFloor: boolean | null = null;
  let confidence: number | null = null;
  for (let i = from; i < from + count; i++) {
    const { aligned } = phones[i]!;
    if (aligned === undefined) continue;
    atFloor = (atFloor ?? true) && aligned.atFloor;
    confidence = Math.min(confidence ?? 1, aligned.confidence);
  }
  return { atFloor, confidence };
}

interface Taken {
  readonly phone: Phone;
  readonly kind: Interval["kind"];
  readonly length: Length | null;
  readonly lengthFrom: "reading" | "label" | null;
  /** Label phones used. */
  readonly count: number;
  /** Morae completed by them. */
  readonly morae: number;
}

function pauseFrom(phones: readonly LabelPhone[], from: number): Taken {
  let end = from;
  while (end < phones.length && isPause(phones[end]!.phone)) end++;
  return take("pause", "pause", null, null, end - from, 0);
}

function take(
  phone: Phone,
  kind: Taken["kind"],
  length: Length | null,
  lengthFrom: Taken["lengthFrom"],
  count: number,
  morae: number,
): Taken {
  return { phone, kind, length, lengthFrom, count, morae };
}

function vowelFrom(
  phones: readonly LabelPhone[],
  from: number,
  spoken: number,
  context: IntervalContext,
): Taken {
  const { phone, long, aligned } = phones[from]!;
  if (aligned?.twoVowels) return take(phone, "vowel", null, null, 1, 2);
  if (long) return take(phone, "vowel", "long", aligned ? "reading" : "label", 1, 2);
  if (context.morae !== null && context.moraOfPhone !== null) {
    let count = 1;
    while (isLengthMark(phones[from + count], phone, context.moraOfPhone[spoken + count], context.morae))
      count++;
    return take(phone, "vowel", count > 1 ? "long" : "short", "reading", count, count);
  }
  const alone = !isVowelAt(phones[from - 1]) && !isVowelAt(phones[from + 1]);
  const known = alone || context.marksLength;
  return take(phone, "vowel", known ? "short" : null, known ? "label" : null, 1, 1);
}

function isLengthMark(
  next: LabelPhone | undefined,
  phone: Phone,
  mora: number | undefined,
  morae: readonly Mora[],
): boolean {
  return next?.phone === phone && mora !== undefined && morae[mora]!.kind === "long";
}

function isVowelAt(phone: LabelPhone | undefined): boolean {
  return phone !== undefined && isVowel(phone.phone);
}

function consonantFrom(phones: readonly LabelPhone[], from: number): Taken {
  const { phone } = phones[from]!;
  const next = phones[from + 1]?.phone;
  if (phone === "cl" && next !== undefined && takesLength(next))
    return take(next, "consonant", "geminate", null, 2, 1);
  const moraic = phone === "N" || phone === "cl";
  return take(phone, "consonant", moraic ? null : "single", null, 1, moraic ? 1 : 0);
}

function takesLength(phone: Phone): boolean {
  return !isVowel(phone) && !isPause(phone) && phone !== "N" && phone !== "cl";
}

function accentOf(phone: LabelPhone, spoken: number, context: IntervalContext): boolean | null {
  if (phone.accented !== null || context.accentOfMora === null || context.moraOfPhone === null)
    return phone.accented;
  return context.accentOfMora[context.moraOfPhone[spoken]!] ?? null;
}
