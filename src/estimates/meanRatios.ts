import type { Basis } from "../basis.ts";
import type { Cells } from "./cells.ts";
import { type ContrastOptions, contrastGroups } from "./contrastGroups.ts";
import type { Cut } from "./dimensions.ts";
import { type MeanRatio, meanRatio } from "./meanRatio.ts";

export interface MeanRatioRow extends MeanRatio {
  readonly by: Cut;
  readonly dataset: string;
  readonly labelSet: string;
  readonly basis: Basis;
  readonly level: number;
  readonly tokens: number;
  readonly words: null;
}

/**
 * Ratios of arithmetic means with Fieller's and bootstrap intervals, for the same cuts as `durationRatios`. Resampling
 * takes longer than a page should wait: meant for the terminal. Cuts with fewer than two speakers have no row.
 */
export function meanRatios(
  cells: Cells,
  options: ContrastOptions & { readonly seed?: number; readonly resamples?: number },
): MeanRatioRow[] {
  const { level = 0.95, seed = 1, resamples = 1999 } = options;
  const { groups, shown } = contrastGroups(cells, options);
  return groups.flatMap((group) => {
    const found = meanRatio(group.strata, { level, seed, resamples });
    if (found === null) return [];
    return [
      {
        by: Object.fromEntries(shown.map((dim) => [dim, group.label(dim)])),
        ...found,
        dataset: String(group.label("dataset")),
        labelSet: String(group.label("labelSet")),
        basis: group.label("timeBasis") as Basis,
        level,
        tokens: group.strata.reduce((sum, { long, short }) => sum + long.tokens + short.tokens, 0),
        words: null,
      },
    ];
  });
}
