import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";
import { partition } from "./partition.ts";

/**
 * The columns to cut by: dataset, label set and basis always, then the wanted ones. `shown` names those that a row
 * must carry: the wanted ones, and before them dataset if there are several, label set if a dataset has several, and
 * basis if a label set has several.
 */
export function neverPooled(
  cells: Cells,
  mask: Uint8Array,
  basis: "devoicedBasis" | "timeBasis",
  by: readonly Dim[],
): { readonly dims: readonly Dim[]; readonly shown: readonly Dim[] } {
  const apart: readonly Dim[] = ["dataset", "labelSet", basis];
  const counts = apart.map((_, depth) => partition(cells, mask, apart.slice(0, depth + 1)).count);
  const several = apart.filter(
    (dim, depth) => !by.includes(dim) && counts[depth]! > (counts[depth - 1] ?? 1),
  );
  const wanted = [...new Set(by)];
  return {
    dims: [...apart, ...wanted.filter((dim) => !apart.includes(dim))],
    shown: [...several, ...wanted],
  };
}
