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
