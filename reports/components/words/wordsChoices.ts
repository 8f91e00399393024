import { ipaOf } from "../../../src/findings/soundNames.ts";
import type { OpenCandidate } from "../../../src/findings/words/openListing.ts";
import { type Target, targets } from "../../../src/findings/words/targets.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { type Choice, type ChoiceOption, Choices } from "../choices.ts";
import { any, one } from "../chosenSet.ts";
import type { WordsCorpus } from "./wordsCorpus.ts";

/** Choices of the filter, in the order of the form; `picks` stands beside them in the address. */
export const filterNames = [
  "target",
  "find",
  "morae",
  "before",
  "after",
  "heard",
  "accent",
  "order",
] as const;

const heardLeast = [1, 2, 3, 5, 8];

/** Sounds as options, in the order of the alphabet of phones. */
function soundOptions(phones: readonly string[]): ChoiceOption[] {
  const text = interfaceText().words;
  const names = [...new Set(phones)].sort();
  return [
    { ...any, label: text.any },
    ...names.map((phone) => ({ value: phone, label: phone === "vowel" ? text.vowelBefore : ipaOf(phone) })),
  ];
}

/** What the reader chose: filter, order and picks, all in the address. */
export function wordsChoices({ candidates }: WordsCorpus): Choices {
  const byTarget = new Map<string, OpenCandidate[]>(targets.map((target) => [target, []]));
  for (const candidate of candidates) byTarget.get(candidate.target)!.push(candidate);
  const present = targets.filter((target) => byTarget.get(target)!.length > 0);
  return new Choices((values) => {
    const text = interfaceText().words;
    const target = present.find((name) => name === values.target) ?? present[0] ?? targets[0];
    const own = byTarget.get(target) ?? [];
    const free = { ...any, label: text.any };
    const longest = Math.max(2, ...own.map(moraeOf));
    const morae = Array.from({ length: longest - 1 }, (_, i) => i + 1);
    const accents = (["known", "same"] as const).filter((value) => value === "known" || own[0]?.words[1]);
    const typed = (name: string, label: string): Choice => ({
      name,
      label,
      kind: "text",
      options: [],
      initial: "",
    });
    return [
      one(
        "target",
        text.target,
        present.map((value) => ({ value, label: text.targets[value].name })),
        present[0] ?? "",
      ),
      typed("find", text.search),
      one(
        "morae",
        text.longest,
        [free, ...morae.map((n) => ({ value: `${n}`, label: text.upTo(n) }))],
        any.value,
      ),
      one("before", text.before, soundOptions(own.map(({ c1 }) => c1)), any.value),
      one("after", text.after, soundOptions(own.map(({ c2 }) => c2)), any.value),
      one(
        "heard",
        text.heardBy,
        [free, ...heardLeast.map((n) => ({ value: `${n}`, label: text.atLeast(n) }))],
        any.value,
      ),
      one(
        "accent",
        text.accent,
        [free, ...accents.map((value) => ({ value, label: text.accents[value] }))],
        any.value,
      ),
      one(
        "order",
        text.order,
        Object.entries(text.orders).map(([value, label]) => ({ value, label })),
        "score",
      ),
      { ...typed("picks", text.picks), longest: 4000 },
    ];
  });
}

export function moraeOf({ words }: OpenCandidate): number {
  return Math.max(...words.map(({ morae }) => morae));
}

export function chosenTarget(choices: Choices): Target {
  return choices.get("target") as Target;
}
