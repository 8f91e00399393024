import type { Filter } from "../../../src/estimates/filter.ts";
import type { Choice, ChoiceOption, Choices } from "../choices.ts";

/** The fields of a cut; the second cut has them under names of its own. */
export const cutFields = ["vowel", "before", "after", "length", "position", "speaker"] as const;
export type CutField = (typeof cutFields)[number];

/** Form of the page that holds the second cut. */
export const secondPart = "second";

export const secondName = (field: CutField) => `second-${field}`;

/** The same choices once more for the second cut, which first stands before a pause. */
export function secondChoices(choices: readonly Choice[]): Choice[] {
  return cutFields.flatMap((field) => {
    const first = choices.find(({ name }) => name === field);
    if (first === undefined) return [];
    const paused = field === "after" && first.options.some(({ value }) => value === "pause");
    return [
      { ...first, name: secondName(field), part: secondPart, initial: paused ? "pause" : first.initial },
    ];
  });
}

/** The filter of either cut, without dataset and label set. */
export function cutFilter(choices: Choices, nameOf: (field: CutField) => string): Filter {
  const wanted = Object.fromEntries(
    cutFields.filter((field) => field !== "vowel").map((field) => [field, choices.get(nameOf(field))]),
  );
  const asked = Object.entries(wanted).filter(([, value]) => value !== "any");
  return { ...Object.fromEntries(asked), vowel: choices.several(nameOf("vowel")) };
}

/** What a cut holds, field by field, as the controls name it; fields left open are left out. */
export function cutWords(
  choices: Choices,
  nameOf: (field: CutField) => string,
  say: (label: string, value: string) => string,
): string[] {
  return cutFields.flatMap((field) => {
    const choice = choices.list.find(({ name }) => name === nameOf(field));
    if (choice === undefined) return [];
    const values = field === "vowel" ? choices.several(choice.name) : [choices.get(choice.name)];
    if (values[0] === "any") return [];
    const labels = choice.options.filter(({ value }: ChoiceOption) => values.includes(value));
    return [say(choice.label, labels.map(({ label }) => label).join(", "))];
  });
}
