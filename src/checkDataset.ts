import type { OpenDataset } from "./datasets/openDataset.ts";
import type { DatasetCard, Problem } from "./datasets/types.ts";
import type { OnProgress } from "./progress.ts";
import { type LoadReader, readUtterances } from "./readUtterances.ts";

/** What `morascope check` finds out. */
export interface CheckReport {
  readonly card: DatasetCard;
  /** Phones in the label files that can be used, pauses included, by label set. */
  readonly phones: Readonly<Record<string, number>>;
  /** Utterances by where their reading comes from: the dataset, their text by dictionary, or nowhere. */
  readonly readings: { readonly dataset: number; readonly predicted: number; readonly none: number };
  readonly problems: readonly Problem[];
}

export interface CheckTools {
  readonly loadReader: LoadReader;
  readonly onProgress: OnProgress;
}

/** Reads every label file and every text of an opened dataset as a run would, without measuring anything. */
export async function checkDataset(
  dataset: OpenDataset,
  { loadReader, onProgress }: CheckTools,
): Promise<CheckReport> {
  const { card } = dataset;
  const problems: Problem[] = [...dataset.problems];
  const phones: Record<string, number> = Object.fromEntries(card.labelSets.map(({ id }) => [id, 0]));
  const readings = { dataset: 0, predicted: 0, none: 0 };
  const options = { loadReader, texts: "missing", task: `Checking ${card.id}`, onProgress } as const;
  for await (const { read, labelled, problems: found } of readUtterances(dataset, options)) {
    readings[read.reading?.from ?? "none"]++;
    for (const set of labelled) phones[set.labelSet.id]! += set.phones;
    problems.push(...found);
  }
  return { card, phones, readings, problems };
}
