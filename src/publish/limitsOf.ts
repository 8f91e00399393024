import type { DatasetCard, LabelSetCard } from "../datasets/types.ts";
import { interfaceText } from "../interface/interfaceText.ts";

/** One way of labelling a dataset, with the name it has on the pages. */
export interface NamedSet {
  readonly name: string;
  readonly card: DatasetCard;
  readonly labels: LabelSetCard;
}

/** What these sets cannot show, in whole sentences, each limit once with the sets it holds for. */
export function limitsOf(sets: readonly NamedSet[]): string[] {
  const names = (holds: (set: NamedSet) => boolean) =>
    sets
      .filter(holds)
      .map(({ name }) => name)
      .join("; ");
  const synthetic = names(({ card }) => card.synthetic);
  const unmarked = names(({ labels }) => labels.devoicingBasis === null);
  const ruled = names(({ labels }) => labels.devoicingBasis === "predicted");
  const floored = sets.filter(
    ({ labels }) => labels.timeBasis === "aligned" && (labels.timeFloorMs ?? 0) >= 10,
  );
  const alone = names(({ card }) => card.speakers === 1);
  const floors = floored.map(({ name, labels }) => `${name} (${labels.timeFloorMs} ms)`).join("; ");
  const words = interfaceText().limits;
  return [
    synthetic && words.synthetic(synthetic),
    unmarked && words.unmarked(unmarked),
    ruled && words.ruled(ruled),
    floors && words.floors(floors),
    alone && words.alone(alone),
    words.read,
  ].filter((limit) => limit !== "");
}
