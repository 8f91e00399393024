import type { Explanation } from "../../../src/estimates/explain/explanation.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { WhatMattersData } from "../../../src/publish/pageData.ts";
import { Choices } from "../choices.ts";
import { chosenSet, one, setChoice } from "../chosenSet.ts";
import { mostTellingSet, type PageData } from "../corpus.ts";

export type ModelPage = PageData<WhatMattersData>;

/** The choices of the page on models. */
export function modelChoices(page: ModelPage): Choices {
  const words = interfaceText().whatMatters;
  const { explanations } = page.data;
  const told = explanations.filter(({ reason }) => reason === null);
  const initial = mostTellingSet(page, told);
  const options = (names: Readonly<Record<string, string>>) =>
    Object.entries(names).map(([value, label]) => ({ value, label }));
  const first = told[0]?.outcome ?? "devoicing";
  return new Choices(({ outcome }) => [
    setChoice(page, initial),
    one("outcome", words.outcome, options(words.outcomes), first),
    ...((outcome ?? first) === "duration"
      ? []
      : [one("scale", words.scale, options(words.scales), "points")]),
  ]);
}

/** The models of the chosen set and outcome; null where the results hold none. */
export function chosenModels(
  page: ModelPage,
  choices: Choices,
): {
  readonly explanation: Explanation | null;
  readonly outcome: Explanation["outcome"];
  readonly asRatio: boolean;
} {
  const { dataset, labelSet } = chosenSet(page, choices.get("set"));
  const outcome = choices.get("outcome") === "duration" ? "duration" : "devoicing";
  const explanation =
    page.data.explanations.find(
      (one) => one.outcome === outcome && one.dataset === dataset && one.labelSet === labelSet,
    ) ?? null;
  return { explanation, outcome, asRatio: outcome === "duration" || choices.get("scale") === "ratio" };
}
