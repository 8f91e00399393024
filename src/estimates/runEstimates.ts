import type { Cells } from "./cells.ts";
import type { DecisionAccuracy } from "./correctedRate.ts";
import { devoicingRates, type Rates } from "./rates.ts";
import { durationRatios, type Ratios } from "./ratios.ts";
import { type StandardRate, type StandardRatio, standardRates, standardRatios } from "./standardCuts.ts";

/** What `estimates.json` holds: the standard cuts with their rows and notes. */
export interface Estimates {
  /** Confidence level of every interval, 0 to 1. */
  readonly level: number;
  readonly rates: readonly (StandardRate & Rates)[];
  readonly ratios: readonly (StandardRatio & Ratios)[];
}

/**
 * The standard cuts of all cells; any other cut is one call of `devoicingRates` or `durationRatios` away. With
 * `accuracy`, measured rates carry a corrected one beside.
 */
export function runEstimates(cells: Cells, level: number, accuracy?: DecisionAccuracy): Estimates {
  const known = accuracy === undefined ? {} : { accuracy };
  return {
    level,
    rates: standardRates.map((cut) => ({
      ...cut,
      ...devoicingRates(cells, { filter: cut.filter, by: cut.by, level, ...known }),
    })),
    ratios: standardRatios.map((cut) => ({
      ...cut,
      ...durationRatios(cells, { contrast: cut.contrast, by: cut.by, level }),
    })),
  };
}
