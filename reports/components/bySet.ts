import { interfaceText } from "../../src/interface/interfaceText.ts";
import type { ChoiceOption } from "./choices.ts";
import type { Corpus, CorpusSet } from "./corpus.ts";

/** The value of “compare by” that puts datasets and ways of labelling side by side. */
export const bySet = "set";

/** The option to compare by set, where there are several. */
export function setComparison({ sets }: Corpus): ChoiceOption[] {
  return sets.length > 1 ? [{ value: bySet, label: interfaceText().figures.setComparison }] : [];
}

/** The cut as each set has it: whatever the dataset, and its speakers. */
export function withoutSet<F extends object>(filter: F) {
  const { dataset: _, speaker: __, ...cut } = filter as F & { dataset?: unknown; speaker?: unknown };
  return cut;
}

/**
 * The same cut of each set in turn, each computed for itself: sets are never added together. A speaker of one set means
 * nothing in another, so that a chosen speaker is dropped.
 */
export function ofEachSet<Row, F extends object>(
  { sets }: Corpus,
  filter: F,
  compute: (filter: F) => readonly Row[],
): { readonly name: string; readonly set: CorpusSet; readonly row: Row }[] {
  const { speaker: _, ...cut } = filter as F & { speaker?: unknown };
  return sets.flatMap((set) =>
    compute({ ...cut, dataset: set.dataset, labelSet: set.labelSet } as unknown as F).map((row) => ({
      ...{ name: set.name, set, row },
    })),
  );
}
