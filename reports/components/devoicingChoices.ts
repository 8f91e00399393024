import type { Filter } from "../../src/estimates/filter.ts";
import { mainBasisFilter } from "../../src/estimates/mainBasisFilter.ts";
import { soundName, soundOption } from "../../src/findings/soundNames.ts";
import type { english } from "../../src/interface/english/index.ts";
import { interfaceText } from "../../src/interface/interfaceText.ts";
import { isVoiceless, phones } from "../../src/phonology/phones.ts";
import { setComparison } from "./bySet.ts";
import { type Choice, type ChoiceOption, Choices } from "./choices.ts";
import { any, chosenFields, chosenSet, one, option, setChoice } from "./chosenSet.ts";
import { type Corpus, type CorpusSet, labelsIn } from "./corpus.ts";
import { secondChoices } from "./devoicing/secondCut.ts";
import { valueName } from "./valueName.ts";

const words = () => interfaceText().controls;
const classOption = (name: keyof typeof english.controls.classes) =>
  option(name, () => words().classes[name]);

const classes: readonly ChoiceOption[] = [
  classOption("voiceless"),
  any,
  classOption("voiced"),
  classOption("stop"),
  classOption("affricate"),
  classOption("fricative"),
];

const lengths: readonly ChoiceOption[] = [
  option("short", () => words().lengths.short),
  option("long", () => words().lengths.long),
  any,
];

/** What rates can be shown side by side by. */
export const comparisons = (
  ["phone", "before", "after", "position", "accented", "devoiceableNeighbour", "length"] as const
).map((name) => option(name, () => words().comparisons[name]));

function phoneOptions(corpus: Corpus, set: CorpusSet, dimension: "before" | "after"): ChoiceOption[] {
  const present = new Set(labelsIn(corpus, set, dimension));
  const sorted = phones.filter((phone) => present.has(phone));
  return [
    ...classes,
    ...sorted
      .sort((a, b) => Number(isVoiceless(b)) - Number(isVoiceless(a)))
      .map((phone) => ({ value: phone, label: soundOption(phone) })),
  ];
}

/** The set whose marks say most: marked by a person or measured, else by rule, else none. */
function mostTelling(sets: readonly CorpusSet[]): CorpusSet {
  const worth = ({ labels }: CorpusSet) =>
    ["measured", "annotated", "aligned", "predicted", null].indexOf(labels.devoicingBasis);
  return [...sets].sort((a, b) => worth(a) - worth(b))[0]!;
}

/** The choices of the devoicing page for a corpus. */
export function devoicingChoices(corpus: Corpus): Choices {
  const first = mostTelling(corpus.sets).key;
  return new Choices(({ set: wanted }) => {
    const set = chosenSet(corpus, wanted ?? first);
    const positions = labelsIn(corpus, set, "position").map((value) => ({
      value,
      label: valueName("position", value),
    }));
    const speakers = labelsIn(corpus, set, "speaker").map((value) => ({ value, label: value }));
    const vowels = ["i", "u", "e", "o", "a"].map((value) => ({ value, label: soundName(value) }));
    const cut: Choice[] = [
      setChoice(corpus, first),
      { name: "vowel", label: words().vowels, kind: "several", options: vowels, initial: "i,u" },
      one("before", words().before, phoneOptions(corpus, set, "before"), "voiceless"),
      one("after", words().after, phoneOptions(corpus, set, "after"), "voiceless"),
      one("length", words().length, lengths, "short"),
      one("position", words().position, [any, ...positions], "any"),
      one(
        "speaker",
        words().speaker,
        [{ value: "any", label: words().allSpeakers(speakers.length) }, ...speakers],
        "any",
      ),
    ];
    return [
      ...cut,
      one("by", words().by, [...comparisons, ...setComparison(corpus)], "phone"),
      ...secondChoices(cut),
    ];
  });
}

/** The filter the choices stand for; the sounds around the vowel can be left out, for pictures that show them all. */
export function devoicingFilter(corpus: Corpus, choices: Choices, { around = true } = {}): Filter {
  const { dataset, labelSet } = chosenSet(corpus, choices.get("set"));
  return {
    dataset,
    labelSet,
    vowel: choices.several("vowel"),
    ...chosenFields(choices, ["position", "speaker", "length"]),
    ...(around ? chosenFields(choices, ["before", "after"]) : {}),
    ...mainBasisFilter(corpus.cells, dataset, labelSet).filter,
  };
}
