import type { Explanation } from "../../../src/estimates/explain/explanation.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { retold } from "../../../src/interface/retold.ts";

/** Vowels, speakers and words that models speak of, and how outcome or times came about; empty where that is not known. */
export function countsOf({ tokens, population, speakers, words, basis, outcome }: Explanation): string {
  if (basis === null) return "";
  const { whatMatters, figures } = interfaceText();
  const how = outcome === "devoicing" ? figures.marks : figures.times;
  return whatMatters.effects.counts(
    ...([tokens, retold(population), figures.speakers(speakers), words] as const),
    how[basis],
  );
}
