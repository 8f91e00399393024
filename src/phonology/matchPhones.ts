import type { Mora } from "./kana.ts";
import type { Phone } from "./phones.ts";
import { spellingsOf } from "./spellings.ts";

/** A label phone without pauses: the phone alone, or with the length its label writes (`a:`). */
export type LabelPhone = Phone | { readonly phone: Phone; readonly long: boolean };

/** Where labels and reading part: the label phone (index from 0) and what the reading expects there. */
export interface PhoneDifference {
  readonly index: number;
  readonly expected: Phone | null;
  readonly found: Phone | null;
  /** Index of the mora concerned; null after the end of the reading. */
  readonly mora: number | null;
}

const phoneOf = (label: LabelPhone | undefined): Phone | null =>
  label === undefined ? null : typeof label === "string" ? label : label.phone;
const isLong = (label: LabelPhone | undefined): boolean => typeof label === "object" && label.long;

/** Number of phones of `spelling` that the labels hold from `from` on. A long label can only end a mora. */
function matchedPhones(labels: readonly LabelPhone[], from: number, spelling: readonly Phone[]): number {
  let matched = 0;
  while (matched < spelling.length && phoneOf(labels[from + matched]) === spelling[matched]) {
    if (isLong(labels[from + matched]) && matched < spelling.length - 1) return matched;
    matched += 1;
  }
  return matched;
}

function walk(
  labels: readonly LabelPhone[],
  morae: readonly Mora[],
): { moraOf: number[]; difference: PhoneDifference | null } {
  const moraOf: number[] = [];
  let lengthened: Phone | null = null;
  for (const [at, mora] of morae.entries()) {
    const from = moraOf.length;
    if (lengthened !== null) {
      const continued = mora.phones.length === 1 && mora.phones[0] === lengthened;
      if (continued) {
        lengthened = null;
        continue;
      }
      return {
        moraOf,
        difference: { index: from, expected: mora.phones[0]!, found: lengthened, mora: at },
      };
    }
    const spelling = spellingsOf(mora).find(
      (phones) => matchedPhones(labels, from, phones) === phones.length,
    );
    if (!spelling) {
      const matched = matchedPhones(labels, from, mora.phones);
      const index = from + matched;
      const difference = {
        index,
        expected: mora.phones[matched]!,
        found: phoneOf(labels[index]),
        mora: at,
      };
      return { moraOf, difference };
    }
    for (const _ of spelling) moraOf.push(at);
    if (isLong(labels[moraOf.length - 1])) lengthened = spelling.at(-1)!;
  }
  const index = moraOf.length;
  const found = lengthened ?? phoneOf(labels[index]);
  return { moraOf, difference: found === null ? null : { index, expected: null, found, mora: null } };
}

/**
 * Mora index of each label phone (pauses left out) when the labels spell the reading, else null.
 * A label that is long for itself (`a:`) covers two morae and gets the first. Other spellings of the same
 * kana count as equal: see `spellingsOf`. What is wrong when it is null tells `firstDifference`.
 */
export function matchPhonesToMorae(
  labelPhones: readonly LabelPhone[],
  morae: readonly Mora[],
): number[] | null {
  const { moraOf, difference } = walk(labelPhones, morae);
  return difference === null ? moraOf : null;
}

/** First place where the labels leave the reading, null when they do not; for the message to the user. */
export function firstDifference(
  labelPhones: readonly LabelPhone[],
  morae: readonly Mora[],
): PhoneDifference | null {
  return walk(labelPhones, morae).difference;
}
