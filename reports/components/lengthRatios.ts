import type { Dim } from "../../src/estimates/dimensions.ts";
import type { Contrast } from "../../src/estimates/lengthContrast.ts";
import { durationRatios, type RatioOptions, type Ratios } from "../../src/estimates/ratios.ts";
import type { Choices } from "./choices.ts";
import type { Corpus } from "./corpus.ts";
import { chosenSurroundings, lengthFilter } from "./lengthChoices.ts";

/** The chosen cut of one contrast, without what it is cut by. */
export function lengthOptions(corpus: Corpus, choices: Choices, contrast: Contrast): RatioOptions {
  const surroundings = chosenSurroundings(choices);
  return {
    contrast,
    filter: lengthFilter(corpus, choices),
    level: corpus.level,
    ...(contrast === "gemination" ? {} : { surroundings }),
  };
}

let latest = new Map<string, Ratios>();

/** Ratios of a cut. Figures that ask the same in one redraw share the answer; the next redraw forgets it. */
export function lengthRatios(corpus: Corpus, options: RatioOptions, by: readonly Dim[]): Ratios {
  const key = JSON.stringify([options, by]);
  const known = latest.get(key);
  if (known !== undefined) return known;
  const ratios = durationRatios(corpus.cells, { ...options, by });
  if (latest.size > 20) latest = new Map();
  latest.set(key, ratios);
  return ratios;
}
