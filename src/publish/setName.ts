import type { DatasetCard } from "../datasets/types.ts";

/** A name longer than this does not fit a heading or a list to choose from. */
const longestName = 40;

/** What a long name says before its first comma, or the dataset's id. */
function shortName({ id, name }: DatasetCard): string {
  const [first = name] = name.split(",", 1);
  return [name, first.trim()].find((text) => text.length <= longestName) ?? id;
}

/** A dataset's name, shortened where it is long; with the label set where it has several. */
export function setName(cards: readonly DatasetCard[], dataset: string, labelSet: string): string {
  const card = cards.find(({ id }) => id === dataset);
  if (card === undefined) return `${dataset}, ${labelSet}`;
  return card.labelSets.length > 1 ? `${shortName(card)}, ${labelSet}` : shortName(card);
}
