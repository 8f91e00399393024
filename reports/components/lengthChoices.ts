import type { Filter } from "../../src/estimates/filter.ts";
import type { Surroundings } from "../../src/estimates/lengthContrast.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { setComparison } from "./bySet.ts";
import { type ChoiceOption, Choices } from "./choices.ts";
import { any, chosenFields, chosenSet, one, option, setChoice } from "./chosenSet.ts";
import { type Corpus, labelsIn } from "./corpus.ts";
import { valueName } from "./valueName.ts";

const words = () => interfaceText().controls;

/** What ratios can be shown side by side by. */
export const lengthComparisons = [
  option("phone", () => words().soundOfLength),
  ...(["position", "accented", "before", "after"] as const).map((name) =>
    option(name, () => words().comparisons[name]),
  ),
];

const surroundings: readonly ChoiceOption[] = (
  ["consonants", "pause", "all"] as const satisfies Surroundings[]
).map((name) => option(name, () => words().surroundings[name]));

/** The choices of the length page for a corpus. */
export function lengthChoices(corpus: Corpus): Choices {
  const telling = corpus.sets.find(({ labels }) => labels.lengthFrom !== null) ?? corpus.sets[0]!;
  return new Choices(({ set: wanted }) => {
    const set = chosenSet(corpus, wanted ?? telling.key);
    const positions = labelsIn(corpus, set, "position").map((value) => ({
      value,
      label: valueName("position", value),
    }));
    const speakers = labelsIn(corpus, set, "speaker").map((value) => ({ value, label: value }));
    return [
      setChoice(corpus, telling.key),
      one("surroundings", words().standing, surroundings, "consonants"),
      one("position", words().position, [any, ...positions], "any"),
      one(
        "speaker",
        words().speaker,
        [{ value: "any", label: words().allSpeakers(speakers.length) }, ...speakers],
        "any",
      ),
      one("by", words().by, [...lengthComparisons, ...setComparison(corpus)], "phone"),
    ];
  });
}

export function lengthFilter(corpus: Corpus, choices: Choices): Filter {
  const { dataset, labelSet } = chosenSet(corpus, choices.get("set"));
  return { dataset, labelSet, ...chosenFields(choices, ["position", "speaker"]) };
}

export function chosenSurroundings(choices: Choices): Surroundings {
  return choices.get("surroundings") as Surroundings;
}
