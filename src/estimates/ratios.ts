import type { Basis } from "../basis.ts";
import { cutByLength, nothingSelected, onesidedCuts } from "../messages/estimates.ts";
import { UserError } from "../messages/userError.ts";
import { dropFloor, keepFloor } from "./cellDurations.ts";
import type { Cells } from "./cells.ts";
import type { Cut, Dim } from "./dimensions.ts";
import { type Filter, filterRestrictions } from "./filter.ts";
import { type Contrast, type Surroundings, selectContrast, sides } from "./lengthContrast.ts";
import { lengthGroups } from "./lengthGroups.ts";
import { neverPooled } from "./neverPooled.ts";
import { type RatioCore, ratioCore } from "./ratioCore.ts";

export interface RatioRow extends RatioCore {
  readonly by: Cut;
  readonly words: null;
  /** How the boundaries came about. */
  readonly basis: Basis;
  readonly dataset: string;
  readonly labelSet: string;
  readonly contrast: Contrast;
  /** Null for geminates. */
  readonly surroundings: Surroundings | null;
}

export interface RatioOptions {
  readonly contrast: Contrast;
  readonly filter?: Filter;
  readonly by?: readonly Dim[];
  /** Default 0.95. */
  readonly level?: number;
  /** Default `consonants`. */
  readonly surroundings?: Surroundings;
  /**
   * Tokens at the aligner's floor: `keep` (default) counts them with the floor as their duration, which makes the short
   * mean too long and the ratio a lower bound (`bound`). `drop` leaves them out, which selects on the outcome: of the
   * short sounds only the longest stay, and the ratio falls further below the truth.
   */
  readonly floor?: "keep" | "drop";
}

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
  const { contrast, filter, by = [], level = 0.95, surroundings = "consonants", floor = "keep" } = options;
  if (by.includes("length")) throw new UserError(cutByLength());
  const selection = selectContrast(cells, filterRestrictions(filter), contrast, surroundings);
  if (selection.length === 0)
    return { rows: [], notes: [nothingSelected(contrast === "gemination" ? "consonant" : "vowel")] };

  const { dims, shown } = neverPooled(cells, selection, "timeBasis", by);
  const durations = floor === "drop" ? dropFloor(cells) : keepFloor(cells);
  const rows: RatioRow[] = [];
  const onesided = new Set<string>();
  for (const group of lengthGroups(cells, selection, dims, durations, sides[contrast].long)) {
    for (const phone of group.onesided) onesided.add(phone);
    if (group.pairs.length === 0) continue;
    rows.push({
      by: Object.fromEntries(shown.map((dim) => [dim, group.label(dim)])),
      ...ratioCore(group.pairs, group.strata, level),
      words: null,
      basis: group.label("timeBasis") as Basis,
      dataset: String(group.label("dataset")),
      labelSet: String(group.label("labelSet")),
      contrast,
      surroundings: contrast === "gemination" ? null : surroundings,
    });
  }
  return { rows, notes: onesided.size === 0 ? [] : [onesidedCuts([...onesided].sort(), contrast)] };
}
