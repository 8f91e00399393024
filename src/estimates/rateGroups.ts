import type { Basis } from "../basis.ts";
import { noDevoicingMarks, nothingSelected } from "../messages/estimates.ts";
import type { Cells } from "./cells.ts";
import type { Cut, Dim } from "./dimensions.ts";
import { type Filter, filterRestrictions } from "./filter.ts";
import { neverPooled } from "./neverPooled.ts";
import { labelOf, partition, runsOf, sumByPart } from "./partition.ts";
import { type Selection, selectCells, selectWhere } from "./selection.ts";

/** Vowels of one cut, by speaker. */
export interface RateGroup {
  readonly by: Cut;
  readonly dataset: string;
  readonly labelSet: string;
  readonly basis: Basis;
  readonly speakers: readonly string[];
  /** Vowels with a devoicing mark and those marked devoiced, one entry a speaker. */
  readonly marked: Float64Array;
  readonly devoiced: Float64Array;
}

/** The cuts of the vowels that match, in the order of their labels; `notes` names label sets without marks. */
export function rateGroups(
  cells: Cells,
  filter: Filter | undefined,
  by: readonly Dim[],
): { readonly groups: RateGroup[]; readonly notes: string[] } {
  const vowels = selectCells(cells, [
    ...filterRestrictions(filter),
    { dim: "kind", accepts: (kind) => kind === "vowel" },
  ]);
  const selection = selectWhere(vowels, (cell) => cells.marked[cell]! > 0);
  const { dims, shown } = neverPooled(cells, selection, "devoicedBasis", by);
  const parts = partition(cells, selection, [
    ...dims,
    ...(dims.includes("speaker") ? [] : ["speaker" as const]),
  ]);
  const marked = sumByPart(parts, cells.marked);
  const devoiced = sumByPart(parts, cells.devoiced);
  const groups = runsOf(parts, dims.length).map(([from, to]) => {
    const label = (dim: Dim) => labelOf(cells, parts, from, dim);
    return {
      by: Object.fromEntries(shown.map((dim) => [dim, label(dim)])),
      dataset: String(label("dataset")),
      labelSet: String(label("labelSet")),
      basis: label("devoicedBasis") as Basis,
      speakers: Array.from({ length: to - from }, (_, i) =>
        String(labelOf(cells, parts, from + i, "speaker")),
      ),
      marked: marked.subarray(from, to),
      devoiced: devoiced.subarray(from, to),
    };
  });
  return { groups, notes: unmarkedNotes(cells, vowels) };
}

/** Label sets of the selection without any mark, each with its number of vowels. */
function unmarkedNotes(cells: Cells, vowels: Selection): string[] {
  const parts = partition(cells, vowels, ["dataset", "labelSet"]);
  if (parts.count === 0) return [nothingSelected("vowel")];
  const marked = sumByPart(parts, cells.marked);
  const tokens = sumByPart(parts, cells.tokens);
  const notes: string[] = [];
  for (let part = 0; part < parts.count; part++) {
    const name = (dim: Dim) => String(labelOf(cells, parts, part, dim));
    if (marked[part] === 0) notes.push(noDevoicingMarks(name("dataset"), name("labelSet"), tokens[part]!));
  }
  return notes;
}
