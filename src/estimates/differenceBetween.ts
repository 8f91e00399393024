import { isEvidence } from "../basis.ts";
import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";
import type { Filter } from "./filter.ts";
import { countsOf } from "./rateContrasts.ts";
import { type RateDifference, rateDifference } from "./rateDifference.ts";
import { rateGroups } from "./rateGroups.ts";
import type { RateRow } from "./rates.ts";

/** Two rows of `devoicingRates` of the same cells and filter. */
export type ComparedRow = Pick<RateRow, "by" | "dataset" | "labelSet" | "basis">;

/**
 * Difference of two rows of rates that were cut by the columns `by`, each speaker set against itself (`rateDifference`).
 * Null where a row is not among the cuts, or the two are not of one dataset, label set and basis that is evidence.
 */
export function differenceBetween(
  cells: Cells,
  { filter, by, level }: { readonly filter?: Filter; readonly by: readonly Dim[]; readonly level: number },
  a: ComparedRow,
  b: ComparedRow,
): RateDifference | null {
  if (a.dataset !== b.dataset || a.labelSet !== b.labelSet || a.basis !== b.basis || !isEvidence(a.basis))
    return null;
  const { groups } = rateGroups(cells, filter, by);
  const [one, other] = [a, b].map((row) =>
    groups.find(
      (group) =>
        (["dataset", "labelSet", "basis"] as const).every((name) => group[name] === row[name]) &&
        by.every((dim) => (group.by[dim] ?? null) === (row.by[dim] ?? null)),
    ),
  );
  if (one === undefined || other === undefined) return null;
  const speakers = [...new Set([...one.speakers, ...other.speakers])];
  return rateDifference(countsOf(one, speakers), countsOf(other, speakers), level);
}
