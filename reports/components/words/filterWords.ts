import type { OpenCandidate } from "../../../src/findings/words/openListing.ts";
import { hiraganaToKatakana } from "../../../src/phonology/katakana.ts";
import type { Choices } from "../choices.ts";
import { any } from "../chosenSet.ts";
import { moraeOf } from "./wordsChoices.ts";

type Test = (candidate: OpenCandidate) => boolean;

/** The candidates that fit all choices, in the chosen order; ties stay in the order of the list, best first. */
export function filterWords(candidates: readonly OpenCandidate[], choices: Choices): OpenCandidate[] {
  const tests = testsOf(choices);
  const kept = candidates.filter((candidate) => tests.every((test) => test(candidate)));
  const by = orders[choices.get("order")];
  return by === undefined ? kept : kept.sort(by);
}

function testsOf(choices: Choices): Test[] {
  const target = choices.get("target");
  const tests: Test[] = [(candidate) => candidate.target === target];
  const when = (name: string, test: (value: string) => Test) => {
    const value = choices.get(name);
    if (value !== any.value && value !== "") tests.push(test(value));
  };
  when("find", matches);
  when("morae", (value) => (candidate) => moraeOf(candidate) <= Number(value));
  when(
    "before",
    (value) =>
      ({ c1 }) =>
        c1 === value,
  );
  when(
    "after",
    (value) =>
      ({ c2 }) =>
        c2 === value,
  );
  when(
    "heard",
    (value) =>
      ({ heardSpeakers }) =>
        heardSpeakers >= Number(value),
  );
  when(
    "accent",
    (value) =>
      ({ words, accent }) =>
        value === "same" ? accent === "same" : words.every(({ accents }) => accents !== null),
  );
  return tests;
}

/** Whether a word holds the text: in kana of either kind, in kanji, or romanised, with or without marks of length. */
function matches(text: string): Test {
  const plain = (romaji: string) => romaji.normalize("NFD").replace(/\p{M}/gu, "");
  const kana = hiraganaToKatakana(text);
  const romaji = plain(text.toLowerCase());
  return ({ words }) =>
    words.some(
      (word) =>
        word.kana.includes(kana) || word.surface.includes(text) || plain(word.romaji).includes(romaji),
    );
}

const orders: Readonly<Record<string, (a: OpenCandidate, b: OpenCandidate) => number>> = {
  contrast: (a, b) => (b.contrast ?? -1) - (a.contrast ?? -1),
  heard: (a, b) => b.heardSpeakers - a.heardSpeakers,
  morae: (a, b) => moraeOf(a) - moraeOf(b),
  kana: (a, b) => (a.words[0]!.kana < b.words[0]!.kana ? -1 : a.words[0]!.kana > b.words[0]!.kana ? 1 : 0),
};
