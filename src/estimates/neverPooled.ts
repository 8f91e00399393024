import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";

/**
 * The columns to cut by: dataset, label set and basis always, then the wanted ones. `shown` names those that a row
 * must carry: the wanted ones, and before them each of the three in which the selection holds several values.
 */
export function neverPooled(
  cells: Cells,
  mask: Uint8Array,
  basis: "devoicedBasis" | "timeBasis",
  by: readonly Dim[],
): { readonly dims: readonly Dim[]; readonly shown: readonly Dim[] } {
  const apart: readonly Dim[] = ["dataset", "labelSet", basis];
  const several = apart.filter((dim) => !by.includes(dim) && holdsSeveral(cells, mask, dim));
  const wanted = [...new Set(by)];
  return {
    dims: [...apart, ...wanted.filter((dim) => !apart.includes(dim))],
    shown: [...several, ...wanted],
  };
}

function holdsSeveral(cells: Cells, mask: Uint8Array, dim: Dim): boolean {
  const { codes } = cells.dimensions[dim];
  let first = -1;
  for (let i = 0; i < mask.length; i++) {
    if (mask[i] === 0) continue;
    if (first < 0) first = codes[i]!;
    else if (codes[i] !== first) return true;
  }
  return false;
}
