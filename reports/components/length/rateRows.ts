import type { Contrast } from "../../../src/estimates/lengthContrast.ts";
import type { RatioRow } from "../../../src/estimates/ratios.ts";
import type { LengthByRate } from "../../../src/estimates/samples/lengthByRate.ts";
import type { Basis } from "../../../src/findings/sentences/basis.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import type { LengthData } from "../../../src/publish/pageData.ts";
import type { Choices } from "../choices.ts";
import { chosenSet } from "../chosenSet.ts";
import { type Corpus, ofSet } from "../corpus.ts";

/** A ratio whose estimate and bounds are known. */
export type Known = RatioRow & { readonly estimate: number; readonly low: number; readonly high: number };

export const isKnown = (row: RatioRow): row is Known =>
  row.estimate !== null && row.low !== null && row.high !== null;

/** What is known of one contrast of the chosen set with speech rate taken into account; null where nothing is. */
export function chosenRates(
  corpus: Corpus,
  choices: Choices,
  { byRate }: LengthData,
  contrast: Contrast,
): LengthByRate | null {
  const set = chosenSet(corpus, choices.get("set"));
  return ofSet(byRate, set)?.contrasts.find((one) => one.contrast === contrast) ?? null;
}

/** The lines under a picture of such ratios; `overall` is the one over all sounds. */
export function rateBasis(contrast: Contrast, overall: RatioRow, rows: readonly RatioRow[]): Basis {
  const { length, figures } = interfaceText();
  return {
    counts: length.counts(
      contrast,
      ...([rows.reduce((sum, row) => sum + row.long.tokens, 0)] as const),
      ...([rows.reduce((sum, row) => sum + row.short.tokens, 0)] as const),
      ...([figures.speakers(overall.speakers), figures.times[overall.basis]] as const),
    ),
    method: `${overall.method}.`,
    warnings: overall.warnings,
  };
}

/** An axis from 1, where both would last the same, in quarters. */
export function ratioDomain(rows: readonly Known[]): [number, number] {
  const low = Math.min(1, ...rows.map((row) => row.low));
  const high = Math.max(2, ...rows.map((row) => row.high));
  return [Math.floor(low * 4) / 4, Math.min(8, Math.ceil(high * 4) / 4)];
}
