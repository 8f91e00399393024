import type { Cells } from "./cells.ts";
import type { Filter } from "./filter.ts";

export interface MainBasis {
  /** Restricts to the basis that most marked vowels of the label set carry; empty where there is only one. */
  readonly filter: Pick<Filter, "devoicedBasis">;
  /** Vowels of the label set with marks of another basis, and which. */
  readonly others: number;
  readonly bases: readonly string[];
}

/**
 * The basis a label set's devoicing mostly rests on. Where single vowels were corrected by a person, those are another
 * basis: they are never pooled with the measured ones, and a picture shows one of the two.
 */
export function mainBasisFilter(cells: Cells, dataset: string, labelSet: string): MainBasis {
  const { dimensions, marked, size } = cells;
  const wantedDataset = dimensions.dataset.labels.indexOf(dataset);
  const wantedSet = dimensions.labelSet.labels.indexOf(labelSet);
  const { codes, labels } = dimensions.devoicedBasis;
  const counts = labels.map(() => 0);
  for (let i = 0; i < size; i++)
    if (dimensions.dataset.codes[i] === wantedDataset && dimensions.labelSet.codes[i] === wantedSet)
      counts[codes[i]!]! += marked[i]!;
  const present = labels
    .map((label, i) => ({ label, count: counts[i]! }))
    .filter(({ label, count }) => label !== null && count > 0)
    .sort((a, b) => b.count - a.count);
  const [main, ...others] = present;
  if (main === undefined || others.length === 0) return { filter: {}, others: 0, bases: [] };
  return {
    filter: { devoicedBasis: String(main.label) },
    others: others.reduce((sum, { count }) => sum + count, 0),
    bases: others.map(({ label }) => String(label)),
  };
}
