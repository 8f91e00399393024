import { labelledIntervals } from "./alignment/labelledIntervals.ts";
import type { OpenDataset } from "./datasets/openDataset.ts";
import type { DatasetCard, LabelFile, Problem, Utterance } from "./datasets/types.ts";
import { textWithoutReading } from "./messages/phonology.ts";
import type { TextReading } from "./phonology/readingTypes.ts";
import { readUtterance, type UtteranceReading } from "./phonology/readUtterance.ts";
import type { OnProgress } from "./progress.ts";

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
  /** Loads what reads text; called only when a text has no reading, since it takes a second and 300 MB. */
  readonly loadReader: () => Promise<(text: string) => TextReading>;
  readonly onProgress: OnProgress;
}

const reportEvery = 200;

/** Reads every label file and every text of an opened dataset as a run would, without measuring anything. */
export async function checkDataset(
  dataset: OpenDataset,
  { loadReader, onProgress }: CheckTools,
): Promise<CheckReport> {
  const { card, utterances } = dataset;
  const problems: Problem[] = [...dataset.problems];
  const phones: Record<string, number> = Object.fromEntries(card.labelSets.map(({ id }) => [id, 0]));
  const readings = { dataset: 0, predicted: 0, none: 0 };
  const readText = utterances.some(({ text, reading }) => text !== null && reading === null)
    ? await loadReader()
    : null;
  const progress = (done: number): void =>
    onProgress({ task: `Checking ${card.id}`, done, total: utterances.length, unit: "utterances" });
  for (const [index, utterance] of utterances.entries()) {
    if (index % reportEvery === 0) {
      progress(index);
      await new Promise(setImmediate);
    }
    const { reading, unread } = readUtterance(utterance, utterance.reading === null ? readText : null);
    readings[reading?.from ?? "none"]++;
    if (unread.length > 0) problems.push(unreadProblem(utterance, unread));
    for (const label of utterance.labels) {
      const found = checkLabel(dataset, utterance, label, reading);
      phones[label.labelSet]! += found.phones;
      problems.push(...found.problems);
    }
  }
  progress(utterances.length);
  return { card, phones, readings, problems };
}

function checkLabel(
  { card, tree }: OpenDataset,
  { dataset, id }: Utterance,
  { labelSet, path }: LabelFile,
  reading: UtteranceReading | null,
): { phones: number; problems: Problem[] } {
  const set = card.labelSets.find((other) => other.id === labelSet)!;
  const { phones, problems } = labelledIntervals(tree.readText(path), set, reading);
  return {
    phones,
    problems: problems.map(({ line, rule, message, wayOut, fatal }) => ({
      dataset,
      utterance: id,
      file: path,
      line,
      rule,
      message,
      wayOut,
      excluded: fatal,
    })),
  };
}

/** A text that cannot be read in full leaves its utterance out, unless labels say what was spoken. */
function unreadProblem({ dataset, id, file, line, labels }: Utterance, unread: readonly string[]): Problem {
  return { dataset, utterance: id, file, line, ...textWithoutReading(unread), excluded: labels.length === 0 };
}
