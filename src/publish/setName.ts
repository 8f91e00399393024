import type { DatasetCard } from "../datasets/types.ts";

/** A name longer than this does not fit a heading or a list to choose from. */
const longestName = 40;

/** A dataset's name, or its short name where the name is long; with the label set where it has several. */
export function setName(cards: readonly DatasetCard[], dataset: string, labelSet: string): string {
  const card = cards.find(({ id }) => id === dataset);
  if (card === undefined) return `${dataset}, ${labelSet}`;
  const name = card.name.length > longestName ? card.id : card.name;
  return card.labelSets.length > 1 ? `${name}, ${labelSet}` : name;
}
