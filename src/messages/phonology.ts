import type { Wording } from "./labels.ts";

/** A filter names neither a phone nor a class of phones. */
export function unknownPhoneSelector(
  name: string,
  classes: readonly string[],
  phones: readonly string[],
): string {
  return [
    `"${name}" is neither a phone nor a class of phones.`,
    `Classes: ${classes.join(", ")}.`,
    `Phones: ${phones.join(", ")}.`,
    "Several may be joined by commas, as in t,k,fricative.",
  ].join("\n");
}

/** The phones of a label file leave the reading; `position` counts label phones without pauses, from 1. */
export function phonesDifferFromReading(
  position: number,
  expected: string | null,
  found: string | null,
  kana: string | null,
): string {
  const place = kana === null ? "after the end of the reading" : `at the mora ${kana} of the reading`;
  if (found === null)
    return `The labels end after ${position - 1} phones, ${place}, where ${expected} should follow.`;
  if (expected === null)
    return `Label phone ${position} is ${found}, ${place}: the labels hold more than the reading.`;
  return `Label phone ${position} is ${found}, ${place}, where ${expected} was expected.`;
}

/** A line of a lexicon lacks its surface or its reading. */
export function lexiconLineUnreadable(file: string, line: number): string {
  return `${file}, line ${line}: a lexicon line holds a word and its reading in kana, separated by a tab, and may add an accent. Put a tab between them, or start the line with # to keep it as a comment.`;
}

/** What is given as a lexicon is a folder, a device or a pipe. */
export function lexiconNoFile(path: string): string {
  return `${path} cannot be read as a lexicon: it is no regular file. Give the path of a text file, with a word, a tab and its reading in kana on each line.`;
}

export function lexiconTooLarge(path: string, mostMb: number): string {
  return `${path} is too large for a lexicon: at most ${mostMb} MB are read. Keep only the words that the dictionary reads wrongly.`;
}

/** A reading of a lexicon is not kana. */
export function lexiconReadingNotKana(file: string, line: number, reading: string): string {
  return `${file}, line ${line}: the reading "${reading}" is not kana only. Write it in katakana or hiragana as it is pronounced, ー for a long vowel.`;
}

/** Words without a reading; an utterance that has no labels either is left out. */
export function textWithoutReading(stretches: readonly string[]): Wording {
  const shown = stretches
    .slice(0, 10)
    .map((text) => `"${text.length > 60 ? `${text.slice(0, 57)}…` : text}"`);
  const quoted = [...shown, ...(stretches.length > 10 ? [`${stretches.length - 10} more`] : [])].join(", ");
  return {
    rule: "text-without-reading",
    message: `No reading is known for ${quoted}, and readings are not guessed.`,
    wayOut: "Give the word in a lexicon (word, tab, kana; --lexicon FILE), or the utterance its reading.",
  };
}
