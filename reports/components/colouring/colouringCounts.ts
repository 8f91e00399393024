import type { Colouring } from "../../../src/estimates/colouring.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";

/** Consonants before either vowel, speakers, and how the marks came about; empty where nothing is known. */
export function colouringCounts(answer: Colouring | null): string {
  if (answer === null || answer.basis === null) return "";
  const { colouring, figures } = interfaceText();
  const { beforeI, beforeU, speakers, basis } = answer;
  return colouring.difference.counts(
    ...([beforeI?.tokens ?? 0, beforeU?.tokens ?? 0] as const),
    ...([figures.speakers(speakers), figures.marks[basis]] as const),
  );
}
