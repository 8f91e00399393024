import type { Timing } from "../../../src/estimates/explain/explainTiming.ts";
import type { StretchSample } from "../../../src/estimates/samples/stretchSample.ts";
import type { TwinMora } from "../../../src/estimates/timing/devoicedMora.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { TimingData } from "../../../src/publish/pageData.ts";
import { Choices } from "../choices.ts";
import { chosenSet, one, setChoice } from "../chosenSet.ts";
import { mostTellingSet, ofSet, type PageData } from "../corpus.ts";

export type TimingPage = PageData<TimingData>;

/** The choices of the timing page. */
export function timingChoices(page: TimingPage): Choices {
  const words = interfaceText().timing;
  const initial = mostTellingSet(page, page.data.timings);
  return new Choices(() => [
    setChoice(page, initial),
    one(
      "unit",
      words.unit,
      (["word", "phrase"] as const).map((value) => ({ value, label: words.units[value] })),
      "word",
    ),
  ]);
}

/** What is known of the chosen set; null where the results hold no answers. */
export function chosenTiming(
  page: TimingPage,
  choices: Choices,
): {
  readonly timing: Timing;
  readonly unit: "word" | "phrase";
  readonly stretches: StretchSample | null;
  readonly twins: readonly TwinMora[];
} | null {
  const set = chosenSet(page, choices.get("set"));
  const timing = ofSet(page.data.timings, set);
  if (timing === undefined) return null;
  const sample = ofSet(page.data.samples, set);
  const unit = choices.get("unit") === "phrase" ? "phrase" : "word";
  const stretches = sample?.stretches.find((one) => one.unit === unit) ?? null;
  return { timing, unit, stretches, twins: sample?.twins ?? [] };
}
