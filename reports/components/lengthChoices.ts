import type { Filter } from "../../src/estimates/filter.ts";
import type { Surroundings } from "../../src/estimates/lengthContrast.ts";
import { setComparison } from "./bySet.ts";
import { Choices } from "./choices.ts";
import { any, chosenFields, chosenSet, one, setChoice } from "./chosenSet.ts";
import { type Corpus, labelsIn } from "./corpus.ts";

/** What ratios can be shown side by side by. */
export const lengthComparisons = [
  { value: "phone", label: "sound" },
  { value: "position", label: "position" },
  { value: "accented", label: "accent" },
  { value: "before", label: "sound before" },
  { value: "after", label: "sound after" },
] as const;

const surroundings: readonly { readonly value: Surroundings; readonly label: string }[] = [
  { value: "consonants", label: "between consonants" },
  { value: "pause", label: "beside a pause" },
  { value: "all", label: "anywhere" },
];

/** The choices of the length page for a corpus. */
export function lengthChoices(corpus: Corpus): Choices {
  const telling = corpus.sets.find(({ labels }) => labels.lengthFrom !== null) ?? corpus.sets[0]!;
  return new Choices(({ set: wanted }) => {
    const set = chosenSet(corpus, wanted ?? telling.key);
    const positions = labelsIn(corpus, set, "position").map((value) => ({ value, label: value }));
    const speakers = labelsIn(corpus, set, "speaker").map((value) => ({ value, label: value }));
    return [
      setChoice(corpus, telling.key),
      one("surroundings", "Vowels standing", surroundings, "consonants"),
      one("position", "Position between pauses", [any, ...positions], "any"),
      one("speaker", "Speaker", [{ value: "any", label: `all (${speakers.length})` }, ...speakers], "any"),
      one("by", "Compare by", [...lengthComparisons, ...setComparison(corpus)], "phone"),
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
