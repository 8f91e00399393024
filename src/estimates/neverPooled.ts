import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";
import { partition, runsOf } from "./partition.ts";
import type { Selection } from "./selection.ts";

/**
 * The columns to cut by: dataset, label set and basis always, then the wanted ones. `shown` names those that a row
 * must carry: the wanted ones, and before them dataset if there are several, label set if a dataset has several, and
 * basis if a label set has several.
 */
export function neverPooled(
  cells: Cells,
  selection: Selection,
  basis: "devoicedBasis" | "timeBasis",
  by: readonly Dim[],
): { readonly dims: readonly Dim[]; readonly shown: readonly Dim[] } {
  const apart: readonly Dim[] = ["dataset", "labelSet", basis];
  const parts = partition(cells, selection, apart);
  const counts = apart.map((_, depth) => runsOf(parts, depth + 1).length);
  const several = apart.filter(
    (dim, depth) => !by.includes(dim) && counts[depth]! > (counts[depth - 1] ?? 1),
  );
  const wanted = [...new Set(by)];
  return {
    dims: [...apart, ...wanted.filter((dim) => !apart.includes(dim))],
    shown: [...several, ...wanted],
  };
}
