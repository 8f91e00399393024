import { interfaceText } from "../../src/interface/interfaceText.ts";
import type { Choice, ChoiceOption, Choices } from "./choices.ts";
import type { CorpusSet, Sets } from "./corpus.ts";

export const any: ChoiceOption = option("any", () => interfaceText().controls.any);

/** An option whose label is asked for when it is drawn, in the language of the page. */
export function option<Value extends string>(
  value: Value,
  label: () => string,
): ChoiceOption & { value: Value } {
  return {
    value,
    get label() {
      return label();
    },
  };
}

export function one(name: string, label: string, options: readonly ChoiceOption[], initial: string): Choice {
  return { name, label, kind: "one", options, initial };
}

export function setChoice({ sets }: Sets, initial: string): Choice {
  return one(
    "set",
    interfaceText().controls.set,
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
