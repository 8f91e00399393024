import { speakerWarnings } from "../../estimates/explain/speakerWarnings.ts";
import type { RateContrast } from "../../estimates/rateContrasts.ts";
import type { RateRow } from "../../estimates/rates.ts";
import { interfaceText } from "../../interface/interfaceText.ts";
import type { Basis } from "./basis.ts";

/**
 * How a difference of two devoicing rates came about, for the lines under a picture: vowels of both cuts, speakers,
 * basis, method, and every doubt about the difference or about the rates `of` the two cuts, each once. Without a
 * difference nothing is said.
 */
export function differenceBasis(found: RateContrast | undefined, of: readonly RateRow[]): Basis {
  if (found === undefined) return { counts: "", method: null, warnings: [] };
  const { devoicing, figures } = interfaceText();
  const { tokens, otherTokens, speakers, basis, method } = found;
  return {
    counts: devoicing.compare.counts(
      ...([tokens, otherTokens] as const),
      ...([figures.speakers(speakers), figures.marks[basis]] as const),
    ),
    method: `${method}.`,
    warnings: [...new Set([...speakerWarnings(speakers), ...of.flatMap(({ warnings }) => warnings)])],
  };
}
