import type { Cells } from "./cells.ts";
import type { DecisionAccuracy } from "./correctedRate.ts";
import { devoicingRates, type Rates } from "./rates.ts";
import { durationRatios, type Ratios } from "./ratios.ts";
import { ratiosWithWords } from "./ratiosWithWords.ts";
import { type StandardRate, type StandardRatio, standardRates, standardRatios } from "./standardCuts.ts";
import type { TokenTable } from "./tokenTable.ts";
import { ratesWithWords } from "./words.ts";

/** What `estimates.json` holds: the standard cuts with their rows and notes. */
export interface Estimates {
  /** Confidence level of every interval, 0 to 1. */
  readonly level: number;
  readonly rates: readonly (StandardRate & Rates)[];
  readonly ratios: readonly (StandardRatio & Ratios)[];
}

/**
 * The standard cuts of all cells; any other cut is one call of `devoicingRates` or `durationRatios` away. With
 * `accuracy`, measured rates carry a corrected one beside; with the tokens of the same corpora, rows tell their words.
 */
export function runEstimates(
  cells: Cells,
  level: number,
  accuracy?: DecisionAccuracy,
  tokens: TokenTable | null = null,
): Estimates {
  const known = accuracy === undefined ? {} : { accuracy };
  return {
    level,
    rates: standardRates.map((cut) => {
      const options = { filter: cut.filter, by: cut.by, level, ...known };
      const rates = devoicingRates(cells, options);
      return { ...cut, ...(tokens ? ratesWithWords(rates, tokens, options) : rates) };
    }),
    ratios: standardRatios.map((cut) => {
      const options = { contrast: cut.contrast, by: cut.by, level };
      const ratios = durationRatios(cells, options);
      return { ...cut, ...(tokens ? ratiosWithWords(ratios, tokens, options) : ratios) };
    }),
  };
}
