import { interfaceText } from "../../interface/interfaceText.ts";
import { ipaOf } from "../soundNames.ts";
import type { ExampleSound, VerdictExamples } from "./verdict.ts";

/** An example in words and IPA: "devoiced [ɯ] after [s] and before a pause in です". */
export function exampleText({ shows, phone, before, after, word }: ExampleSound): string {
  const { example, sounds, part } = interfaceText().verdicts;
  const named = (sound: string) => sounds[sound] ?? `[${ipaOf(sound)}]`;
  const around = [part("before", before, named(before)), part("after", after, named(after))] as const;
  return example(shows, named(phone), around, word);
}

/** What makes it clear: "probability 0.98", "3.17 times the speaker’s mean"; null where it was only marked. */
export function exampleValue({ value }: ExampleSound, by: VerdictExamples["by"]): string | null {
  if (value === null) return null;
  const { probability, timesMean } = interfaceText().verdicts;
  return by === "probability" ? probability(value.toFixed(2)) : timesMean(value.toFixed(2));
}
