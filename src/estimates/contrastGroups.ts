import { cutByLength, nothingSelected } from "../messages/estimates.ts";
import { UserError } from "../messages/userError.ts";
import { dropFloor, keepFloor } from "./cellDurations.ts";
import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";
import { type Filter, filterRestrictions } from "./filter.ts";
import { type Contrast, type Surroundings, selectContrast, sides } from "./lengthContrast.ts";
import { type LengthGroup, lengthGroups } from "./lengthGroups.ts";
import { neverPooled } from "./neverPooled.ts";

export interface ContrastOptions {
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

/**
 * The groups that a length contrast is estimated in, with the columns their rows must carry. Datasets, label sets and
 * bases are never pooled. Throws a UserError when asked to cut by length.
 */
export function contrastGroups(
  cells: Cells,
  { contrast, filter, by = [], surroundings = "consonants", floor = "keep" }: ContrastOptions,
): { readonly groups: LengthGroup[]; readonly shown: readonly Dim[]; readonly notes: string[] } {
  if (by.includes("length")) throw new UserError(cutByLength());
  const selection = selectContrast(cells, filterRestrictions(filter), contrast, surroundings);
  if (selection.length === 0)
    return {
      groups: [],
      shown: [],
      notes: [nothingSelected(contrast === "gemination" ? "consonant" : "vowel")],
    };
  const { dims, shown } = neverPooled(cells, selection, "timeBasis", by);
  const durations = floor === "drop" ? dropFloor(cells) : keepFloor(cells);
  return { groups: lengthGroups(cells, selection, dims, durations, sides[contrast].long), shown, notes: [] };
}
