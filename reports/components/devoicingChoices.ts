import type { Filter } from "../../src/estimates/filter.ts";
import { soundName, soundOption } from "../../src/findings/soundNames.ts";
import { isVoiceless, phones } from "../../src/phonology/phones.ts";
import { setComparison } from "./bySet.ts";
import { type Choice, type ChoiceOption, Choices } from "./choices.ts";
import { any, chosenFields, chosenSet, one, setChoice } from "./chosenSet.ts";
import { type Corpus, type CorpusSet, labelsIn } from "./corpus.ts";
import { secondChoices } from "./devoicing/secondCut.ts";

const classes: readonly ChoiceOption[] = [
  { value: "voiceless", label: "any voiceless consonant" },
  any,
  { value: "voiced", label: "any voiced sound" },
  { value: "stop", label: "any stop" },
  { value: "affricate", label: "any affricate" },
  { value: "fricative", label: "any fricative" },
];

const lengths: readonly ChoiceOption[] = [
  { value: "short", label: "short" },
  { value: "long", label: "long" },
  any,
];

/** What rates can be shown side by side by. */
export const comparisons = [
  { value: "phone", label: "vowel" },
  { value: "before", label: "sound before" },
  { value: "after", label: "sound after" },
  { value: "position", label: "position" },
  { value: "accented", label: "accent" },
  { value: "devoiceableNeighbour", label: "neighbouring whispered vowel" },
  { value: "length", label: "vowel length" },
] as const;

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
    const positions = labelsIn(corpus, set, "position").map((value) => ({ value, label: value }));
    const speakers = labelsIn(corpus, set, "speaker").map((value) => ({ value, label: value }));
    const vowels = ["i", "u", "e", "o", "a"].map((value) => ({ value, label: soundName(value) }));
    const cut: Choice[] = [
      setChoice(corpus, first),
      { name: "vowel", label: "Vowels", kind: "several", options: vowels, initial: "i,u" },
      one("before", "Sound before", phoneOptions(corpus, set, "before"), "voiceless"),
      one("after", "Sound after", phoneOptions(corpus, set, "after"), "voiceless"),
      one("length", "Vowel length", lengths, "short"),
      one("position", "Position between pauses", [any, ...positions], "any"),
      one("speaker", "Speaker", [{ value: "any", label: `all (${speakers.length})` }, ...speakers], "any"),
    ];
    return [
      ...cut,
      one("by", "Compare by", [...comparisons, ...setComparison(corpus)], "phone"),
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
  };
}
