import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";

/** One condition on one column of the cells. */
export interface Restriction {
  readonly dim: Dim;
  readonly accepts: (label: string | null) => boolean;
}

/** Rows of the cells, ascending. */
export type Selection = Uint32Array;

/**
 * The cells that meet every restriction. Each condition is tried on the few labels of its column first; the pass over
 * the cells only looks up codes, the strictest restriction first, each on what the earlier ones left.
 */
export function selectCells(
  cells: Pick<Cells, "size" | "dimensions">,
  restrictions: readonly Restriction[],
): Selection {
  const looked = restrictions
    .map(({ dim, accepts }) => {
      const { codes, labels } = cells.dimensions[dim];
      const accepted = Uint8Array.from(labels, (label) => (accepts(label) ? 1 : 0));
      return {
        codes,
        accepted,
        share: accepted.reduce((sum, one) => sum + one, 0) / Math.max(1, labels.length),
      };
    })
    .filter(({ share }) => share < 1)
    .sort((a, b) => a.share - b.share);
  const [first, ...rest] = looked;
  if (first === undefined) return Uint32Array.from({ length: cells.size }, (_, i) => i);
  let selection = selectFirst(first.codes, first.accepted);
  for (const { codes, accepted } of rest) selection = narrow(selection, codes, accepted);
  return selection;
}

/** The selected cells for which `keep` holds. */
export function selectWhere(selection: Selection, keep: (cell: number) => boolean): Selection {
  const kept = new Uint32Array(selection.length);
  let count = 0;
  for (let i = 0; i < selection.length; i++) if (keep(selection[i]!)) kept[count++] = selection[i]!;
  return kept.subarray(0, count);
}

function selectFirst(codes: Uint16Array | Uint32Array, accepted: Uint8Array): Selection {
  const kept = new Uint32Array(codes.length);
  let count = 0;
  for (let i = 0; i < codes.length; i++) {
    kept[count] = i;
    count += accepted[codes[i]!]!;
  }
  return kept.subarray(0, count);
}

function narrow(selection: Selection, codes: Uint16Array | Uint32Array, accepted: Uint8Array): Selection {
  let count = 0;
  for (let i = 0; i < selection.length; i++) {
    const cell = selection[i]!;
    selection[count] = cell;
    count += accepted[codes[cell]!]!;
  }
  return selection.subarray(0, count);
}
