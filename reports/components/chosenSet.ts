import type { Choice, ChoiceOption, Choices } from "./choices.ts";
import type { CorpusSet, Sets } from "./corpus.ts";

export const any: ChoiceOption = { value: "any", label: "any" };

export function one(name: string, label: string, options: readonly ChoiceOption[], initial: string): Choice {
  return { name, label, kind: "one", options, initial };
}

export function setChoice({ sets }: Sets, initial: string): Choice {
  return one(
    "set",
    "Dataset and labels",
    sets.map(({ key, name }) => ({ value: key, label: name })),
    initial,
  );
}

export function chosenSet({ sets }: Sets, key: string): CorpusSet {
  return sets.find((set) => set.key === key) ?? sets[0]!;
}

/** The chosen values of these names as filter fields; a name left at `any` does not restrict. */
export function chosenFields(choices: Choices, names: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    names.map((name) => [name, choices.get(name)]).filter(([, value]) => value !== "any"),
  );
}
