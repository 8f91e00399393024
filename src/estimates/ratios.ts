import type { Basis } from "../basis.ts";
import type { Cells } from "./cells.ts";
import { type ContrastOptions, contrastGroups } from "./contrastGroups.ts";
import type { CrossedRatio } from "./crossedRatio.ts";
import type { Cut } from "./dimensions.ts";
import type { Contrast, Surroundings } from "./lengthContrast.ts";
import { type RatioCore, ratioCore } from "./ratioCore.ts";
import { ratioNotes } from "./ratioNotes.ts";
import type { VoicedRatio } from "./voicedRatio.ts";

export interface RatioRow extends RatioCore {
  readonly by: Cut;
  /** Words that the sounds stand in; null where only cells are at hand, which hold no words. */
  readonly words: number | null;
  /** The interval where words count as belonging together too; null likewise, and where too few words stand on a side. */
  readonly crossed: CrossedRatio | null;
  /** The same without devoiced vowels; null likewise, and where no short vowel is known to be devoiced. */
  readonly voiced: VoicedRatio | null;
  /** How the boundaries came about. */
  readonly basis: Basis;
  readonly dataset: string;
  readonly labelSet: string;
  readonly contrast: Contrast;
  /** Null for geminates. */
  readonly surroundings: Surroundings | null;
}

export type RatioOptions = ContrastOptions;

export interface Ratios {
  readonly rows: RatioRow[];
  /** What the reader must know beyond the rows, in whole sentences. */
  readonly notes: string[];
}

/**
 * Duration ratios of long to short vowels or of geminates to single consonants, one row a combination of the `by`
 * columns, in the order of their labels. Datasets, label sets and bases are never pooled. A row that holds several
 * phones compares each with itself only. Throws a UserError when asked to cut by length.
 */
export function durationRatios(cells: Cells, options: RatioOptions): Ratios {
  const { contrast, level = 0.95, surroundings = "consonants" } = options;
  const { groups, shown, notes } = contrastGroups(cells, options);
  const rows: RatioRow[] = [];
  for (const group of groups) {
    if (group.pairs.length === 0) continue;
    rows.push({
      by: Object.fromEntries(shown.map((dim) => [dim, group.label(dim)])),
      ...ratioCore(group.pairs, group.strata, level),
      ...{ words: null, crossed: null, voiced: null },
      basis: group.label("timeBasis") as Basis,
      dataset: String(group.label("dataset")),
      labelSet: String(group.label("labelSet")),
      contrast,
      surroundings: contrast === "gemination" ? null : surroundings,
    });
  }
  return { rows, notes: [...notes, ...ratioNotes(cells, groups, options)] };
}
