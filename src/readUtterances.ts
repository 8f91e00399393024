import { type LabelledIntervals, labelledIntervals } from "./alignment/labelledIntervals.ts";
import type { ListedDataset, OpenDataset } from "./datasets/openDataset.ts";
import type { LabelFile, LabelSetCard, Problem, Utterance } from "./datasets/types.ts";
import { labelUnreadable } from "./messages/labels.ts";
import { textWithoutReading } from "./messages/phonology.ts";
import { UserError } from "./messages/userError.ts";
import type { TextReading } from "./phonology/readingTypes.ts";
import { readUtterance, type UtteranceRead } from "./phonology/readUtterance.ts";
import type { OnProgress } from "./progress.ts";

/** Loads what reads text; called only when needed, since it takes a second and 300 MB. */
export type LoadReader = () => Promise<(text: string) => TextReading>;

export interface ReadOptions {
  readonly loadReader: LoadReader;
  /** `missing`: read only texts that come without a reading; `all`: every text, to know the words too. */
  readonly texts: "missing" | "all";
  /** What the progress line says. */
  readonly task: string;
  readonly onProgress: OnProgress;
}

export interface LabelledSet extends Omit<LabelledIntervals, "problems"> {
  readonly labelSet: LabelSetCard;
}

/** One utterance after phonology and label reading. */
export interface ReadResult {
  readonly utterance: Utterance;
  readonly read: UtteranceRead;
  readonly labelled: readonly LabelledSet[];
  readonly problems: readonly Problem[];
}

/** Utterances between two reports of progress. */
const reportEvery = 100;

/** Takes every utterance of a dataset through phonology and its label files, in the order of the dataset's lists. */
export async function* readUtterances(
  dataset: OpenDataset,
  { loadReader, texts, task, onProgress }: ReadOptions,
): AsyncGenerator<ReadResult> {
  const { utterances } = dataset;
  const readText = utterances.some((one) => wantsText(one, texts)) ? await loadReader() : null;
  const progress = (done: number) => onProgress({ task, done, total: utterances.length, unit: "utterances" });
  for (const [i, utterance] of utterances.entries()) {
    if (i % reportEvery === 0) {
      progress(i);
      await new Promise(setImmediate);
    }
    yield readOne(dataset, utterance, wantsText(utterance, texts) ? readText : null);
  }
  progress(utterances.length);
}

/** Whether a text reader is of use to an utterance. */
export function wantsText({ text, reading, accentReading }: Utterance, texts: ReadOptions["texts"]): boolean {
  return text !== null && (texts === "all" || (reading === null && accentReading === null));
}

/** Takes one utterance of a dataset through phonology and its label files. */
export function readOne(
  dataset: ListedDataset,
  utterance: Utterance,
  readText: ((text: string) => TextReading) | null,
): ReadResult {
  const read = readUtterance(utterance, readText);
  const problems = read.unread.length > 0 ? [unreadProblem(utterance, read.unread)] : [];
  const labelled: LabelledSet[] = [];
  for (const label of utterance.labels) {
    const { labelSet, problems: found, ...intervals } = readLabelSet(dataset, label, read);
    labelled.push({ labelSet, ...intervals });
    problems.push(...found.map((problem) => labelProblem(utterance, label, problem)));
  }
  return { utterance, read, labelled, problems };
}

function readLabelSet(
  { card, tree }: ListedDataset,
  { labelSet, path }: LabelFile,
  { reading }: UtteranceRead,
): LabelledIntervals & { labelSet: LabelSetCard } {
  const set = card.labelSets.find(({ id }) => id === labelSet)!;
  let text: string;
  try {
    text = tree.readText(path);
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    const problem = { line: 1, fatal: true, ...labelUnreadable(error.message) };
    return { labelSet: set, intervals: [], phones: 0, readingFits: null, problems: [problem] };
  }
  return { labelSet: set, ...labelledIntervals(text, set, reading) };
}

function labelProblem(
  { dataset, id }: Utterance,
  { path }: LabelFile,
  { line, rule, message, wayOut, fatal }: LabelledIntervals["problems"][number],
): Problem {
  return { dataset, utterance: id, file: path, line, rule, message, wayOut, excluded: fatal };
}

/** A text that cannot be read in full leaves its utterance out, unless labels say what was spoken. */
function unreadProblem({ dataset, id, file, line, labels }: Utterance, unread: readonly string[]): Problem {
  return { dataset, utterance: id, file, line, ...textWithoutReading(unread), excluded: labels.length === 0 };
}
