import type { ExampleSound, VerdictExamples } from "./verdict.ts";
import { partText } from "./verdictSentence.ts";

/** An example in words: "devoiced /u/ after /s/ before a pause in です". */
export function exampleText({ shows, phone, before, after, word }: ExampleSound): string {
  const around = [partText({ column: "before", value: before }), partText({ column: "after", value: after })];
  const sound = `${shows === null ? "" : `${shows} `}/${phone}/`;
  return `${sound} ${around.join(" and ")}${word === null ? "" : ` in ${word}`}`;
}

/** What makes it clear: "probability 0.98", "3.17 times the speaker’s mean"; null where it was only marked. */
export function exampleValue({ value }: ExampleSound, by: VerdictExamples["by"]): string | null {
  if (value === null) return null;
  return by === "probability"
    ? `probability ${value.toFixed(2)}`
    : `${value.toFixed(2)} times the speaker’s mean`;
}
