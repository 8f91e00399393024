import { soundName, soundOption } from "../../../src/findings/soundNames.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { isVoiceless, phones } from "../../../src/phonology/phones.ts";
import { type ListenNumber, listenMeasure, listenNumbers } from "../../../src/publish/listenColumns.ts";
import {
  type ListenDecision,
  type ListenOrder,
  type ListenQuery,
  listenDecisions,
  listenOrders,
} from "../../../src/publish/listenSearch.ts";
import { type ChoiceOption, Choices } from "../choices.ts";
import { one } from "../chosenSet.ts";
import type { CorpusSet } from "../corpus.ts";
import type { ListenCorpus } from "./listenCorpus.ts";

/** Controls that stand in the open, and those that are folded away. */
export const openChoices = ["set", "word", "sound", "decision", "order"] as const;
export const foldedChoices = [
  ...(["before", "after", "length", "speaker", "measure", "from", "to", "scope"] as const),
] as const;

const searchable: readonly ListenNumber[] = [
  ...(["durationMs", "devoicedProbability", "voicingLogOdds", "islandMs", "voicedMs", "f0Hz"] as const),
  ...(["f1Hz", "f2Hz", "fricationCentreHz", "intensityDb"] as const),
];

/** The label set most worth listening to: one whose devoicing was measured or marked. */
function firstSet(sets: readonly CorpusSet[]): string {
  return (sets.find(({ labels }) => labels.timeBasis === "annotated") ?? sets[0])?.key ?? "";
}

/** What a reader can look for. */
export function listenChoices(corpus: ListenCorpus): Choices {
  const { sets, utterances, table, local } = corpus;
  const words = interfaceText().listen;
  const first = firstSet(sets);
  const any = (label: string): ChoiceOption => ({ value: "any", label });
  return new Choices(({ set: wanted }) => {
    const set = sets.find(({ key }) => key === wanted) ?? sets.find(({ key }) => key === first);
    const spoken = new Set(
      utterances.filter((one) => one.dataset === set?.dataset).map((one) => one.speaker),
    );
    const present = (names: readonly string[]) =>
      phones
        .filter((phone) => names.includes(phone))
        .sort((a, b) => Number(isVoiceless(b)) - Number(isVoiceless(a)))
        .map((phone) => ({ value: phone, label: soundOption(phone) }));
    const around = (names: readonly string[]) => [
      any(words.any),
      { value: "voiceless", label: words.voicelessConsonant },
      { value: "voiced", label: words.voicedSound },
      ...present(names),
    ];
    const measures = searchable.map((value) => {
      const { unit } = listenMeasure(value);
      return {
        value,
        label:
          words.measures[value as keyof typeof words.measures] +
          (unit === null || unit === "1" ? "" : ` (${unit})`),
      };
    });
    return [
      one(
        "set",
        words.set,
        sets.map(({ key, name }) => ({ value: key, label: name })),
        first,
      ),
      { name: "word", label: words.word, kind: "text", options: [], initial: "" },
      one(
        "sound",
        words.sound,
        [
          { value: "high-vowel", label: words.highVowels(soundName("i"), soundName("u")) },
          { value: "vowel", label: words.anyVowel },
          { value: "consonant", label: words.anyConsonant },
          any(words.anySound),
          ...present(table.names.phone),
        ],
        "high-vowel",
      ),
      one(
        "decision",
        words.decision,
        listenDecisions.map((value) => ({ value, label: words.decisions[value] })),
        "any",
      ),
      one(
        "order",
        words.order,
        listenOrders.map((value) => ({ value, label: words.orders[value] })),
        "corpus",
      ),
      one("before", words.before, around(table.names.before), "any"),
      one("after", words.after, around(table.names.after), "any"),
      one(
        "length",
        words.length,
        [
          any(words.any),
          ...(["short", "long", "single", "geminate"] as const).map((value) => ({
            value,
            label: words.lengths[value],
          })),
        ],
        "any",
      ),
      one(
        "speaker",
        words.speaker,
        [
          any(words.allSpeakers(spoken.size)),
          ...[...spoken].sort().map((value) => ({ value, label: value })),
        ],
        "any",
      ),
      one("measure", words.measure, measures, "durationMs"),
      { name: "from", label: words.from, kind: "number", options: [], initial: "" },
      { name: "to", label: words.to, kind: "number", options: [], initial: "" },
      { name: "token", label: "", kind: "text", options: [], initial: "" },
      ...(local === null ? [] : [scopeChoice(corpus)]),
    ];
  });
}

function scopeChoice({ datasets, all }: ListenCorpus) {
  const words = interfaceText().listen;
  const sum = (count: (one: ListenCorpus["datasets"][number]) => number) =>
    datasets.reduce((total, one) => total + count(one), 0);
  const options = [
    { value: "all", label: words.scopeAll(sum(({ tokens }) => tokens)) },
    { value: "site", label: words.scopeSite },
  ];
  return one("scope", words.scope, options, all ? "all" : "site");
}

/** The chosen label set. */
export function setOf({ sets }: ListenCorpus, choices: Choices): CorpusSet | null {
  return sets.find(({ key }) => key === choices.get("set")) ?? null;
}

const orNull = (value: string) => (value === "any" || value === "" ? null : value);
const numberOrNull = (value: string) => (value === "" ? null : Number(value));

/** What the choices ask for. */
export function listenQuery(
  choices: Choices,
  set: CorpusSet,
  isMarked: (row: number) => boolean,
): ListenQuery {
  const name = choices.get("measure") as ListenNumber;
  return {
    ...{ dataset: set.dataset, labelSet: set.labelSet, word: choices.get("word"), isMarked },
    ...{ sound: orNull(choices.get("sound")), before: orNull(choices.get("before")) },
    ...{ after: orNull(choices.get("after")), length: orNull(choices.get("length")) },
    speaker: orNull(choices.get("speaker")),
    decision: choices.get("decision") as ListenDecision,
    measure:
      name in listenNumbers
        ? { name, from: numberOrNull(choices.get("from")), to: numberOrNull(choices.get("to")) }
        : null,
    order: choices.get("order") as ListenOrder,
  };
}
