import { labelledIntervals } from "./alignment/labelledIntervals.ts";
import type { OpenDataset } from "./datasets/openDataset.ts";
import type { LabelFile, Problem, Utterance } from "./datasets/types.ts";
import { toIntervalRows } from "./measures/toIntervalRows.ts";
import { toTokens } from "./measures/toTokens.ts";
import { textWithoutReading } from "./messages/phonology.ts";
import type { TextReading } from "./phonology/readingTypes.ts";
import { readUtterance, type UtteranceRead } from "./phonology/readUtterance.ts";
import type { OnProgress } from "./progress.ts";
import type { ResultsWriter } from "./storage/resultsWriter.ts";

/** Loads what reads text; called only when a dataset has text, since it takes a second and 300 MB. */
export type LoadReader = () => Promise<(text: string) => TextReading>;

/** Utterances between two reports of progress. */
const reportEvery = 50;

/** Takes every labelled utterance of a dataset through phonology, alignment and measures into the tables. */
export async function readDataset(
  dataset: OpenDataset,
  writer: ResultsWriter,
  loadReader: LoadReader,
  onProgress: OnProgress,
): Promise<{ problems: Problem[]; phones: number }> {
  const problems: Problem[] = [];
  let phones = 0;
  const { utterances, card } = dataset;
  const readText = utterances.some(({ text }) => text !== null) ? await loadReader() : null;
  for (const [i, utterance] of utterances.entries()) {
    if (i % reportEvery === 0) {
      onProgress({ task: `Reading ${card.id}`, done: i, total: utterances.length, unit: "utterances" });
      await new Promise(setImmediate);
    }
    const read = readUtterance(utterance, readText);
    if (read.unread.length > 0) problems.push(unreadProblem(utterance, read.unread));
    const fits: boolean[] = [];
    for (const label of utterance.labels) {
      const used = readLabel(dataset, utterance, label, read, writer);
      problems.push(...used.problems);
      phones += used.phones;
      if (used.readingFits !== null) fits.push(used.readingFits);
    }
    writer.utterances.append({
      dataset: utterance.dataset,
      utterance: utterance.id,
      speaker: utterance.speaker,
      style: utterance.style,
      text: utterance.text,
      reading: read.reading?.kana ?? null,
      readingFrom: read.reading?.from ?? null,
      audio: utterance.audio,
      labelSets: utterance.labels.length,
      readingFits: fits.length === 0 ? null : fits.every(Boolean),
    });
  }
  onProgress({
    task: `Reading ${card.id}`,
    done: utterances.length,
    total: utterances.length,
    unit: "utterances",
  });
  return { problems, phones };
}

function readLabel(
  { card, tree }: OpenDataset,
  utterance: Utterance,
  label: LabelFile,
  { reading, wordOfMora }: UtteranceRead,
  writer: ResultsWriter,
): { problems: Problem[]; phones: number; readingFits: boolean | null } {
  const labelSet = card.labelSets.find(({ id }) => id === label.labelSet)!;
  const { intervals, phones, readingFits, problems } = labelledIntervals(
    tree.readText(label.path),
    labelSet,
    reading,
  );
  const context = {
    dataset: utterance.dataset,
    labelSet: labelSet.id,
    speaker: utterance.speaker,
    utterance: utterance.id,
    timeBasis: labelSet.timeBasis,
    timeFloorMs: labelSet.timeFloorMs,
    devoicingBasis: labelSet.devoicingBasis,
    wordOfMora: readingFits === true ? wordOfMora : null,
  };
  for (const row of toIntervalRows(intervals, context)) writer.intervals.append(row);
  for (const row of toTokens(intervals, context)) writer.tokens.append(row);
  return {
    phones,
    readingFits,
    problems: problems.map(({ line, rule, message, wayOut, fatal }) => ({
      dataset: utterance.dataset,
      utterance: utterance.id,
      file: label.path,
      line,
      rule,
      message,
      wayOut,
      excluded: fatal,
    })),
  };
}

function unreadProblem(utterance: Utterance, unread: readonly string[]): Problem {
  return {
    dataset: utterance.dataset,
    utterance: utterance.id,
    file: utterance.file,
    line: utterance.line,
    ...textWithoutReading(unread),
    excluded: utterance.labels.length === 0,
  };
}
