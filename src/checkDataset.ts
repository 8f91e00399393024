import { labelledIntervals } from "./alignment/labelledIntervals.ts";
import type { OpenDataset } from "./datasets/openDataset.ts";
import type { DatasetCard, LabelFile, Problem, Utterance } from "./datasets/types.ts";
import { audioWithoutReading } from "./messages/check.ts";
import { readUtterance } from "./phonology/readUtterance.ts";
import type { OnProgress } from "./progress.ts";

/** What `morascope check` finds out. */
export interface CheckReport {
  readonly card: DatasetCard;
  /** Phones in the label files that can be used, pauses included, by label set. */
  readonly phones: Readonly<Record<string, number>>;
  /** Utterances whose dataset gives no reading. */
  readonly withoutReading: number;
  readonly problems: readonly Problem[];
}

const reportEvery = 200;

/** Reads every label file of an opened dataset as a run would, without measuring anything. */
export async function checkDataset(dataset: OpenDataset, onProgress: OnProgress): Promise<CheckReport> {
  const { card, utterances } = dataset;
  const problems: Problem[] = [...dataset.problems];
  const phones: Record<string, number> = Object.fromEntries(card.labelSets.map(({ id }) => [id, 0]));
  let withoutReading = 0;
  for (const [index, utterance] of utterances.entries()) {
    if (index % reportEvery === 0) {
      onProgress({ task: `Checking ${card.id}`, done: index, total: utterances.length, unit: "utterances" });
      await new Promise(setImmediate);
    }
    if (utterance.reading === null) withoutReading++;
    for (const label of utterance.labels) {
      const found = checkLabel(dataset, utterance, label);
      phones[label.labelSet]! += found.phones;
      problems.push(...found.problems);
    }
  }
  onProgress({
    task: `Checking ${card.id}`,
    done: utterances.length,
    total: utterances.length,
    unit: "utterances",
  });
  const unread = utterances.filter(({ reading, labels }) => reading === null && labels.length === 0).length;
  if (unread > 0) problems.push(audioWithoutReadingProblem(card.id, utterances, unread));
  return { card, phones, withoutReading, problems };
}

function checkLabel(
  { card, tree }: OpenDataset,
  utterance: Utterance,
  { labelSet, path }: LabelFile,
): { phones: number; problems: Problem[] } {
  const set = card.labelSets.find(({ id }) => id === labelSet)!;
  const { phones, problems } = labelledIntervals(tree.readText(path), set, readUtterance(utterance, null));
  return {
    phones,
    problems: problems.map(({ line, rule, message, wayOut, fatal }) => ({
      dataset: utterance.dataset,
      utterance: utterance.id,
      file: path,
      line,
      rule,
      message,
      wayOut,
      excluded: fatal,
    })),
  };
}

function audioWithoutReadingProblem(
  dataset: string,
  utterances: readonly Utterance[],
  count: number,
): Problem {
  const first = utterances.find(({ reading, labels }) => reading === null && labels.length === 0)!;
  return {
    dataset,
    utterance: null,
    file: first.file,
    line: first.line,
    excluded: false,
    ...audioWithoutReading(count),
  };
}
