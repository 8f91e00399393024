import type { OpenDataset } from "./datasets/openDataset.ts";
import type { Problem } from "./datasets/types.ts";
import { toIntervalRows } from "./measures/toIntervalRows.ts";
import { type TokenContext, toTokens } from "./measures/toTokens.ts";
import type { OnProgress } from "./progress.ts";
import { type LabelledSet, type LoadReader, type ReadResult, readUtterances } from "./readUtterances.ts";
import type { ResultsWriter } from "./storage/resultsWriter.ts";

/** Takes every labelled utterance of a dataset through phonology, alignment and measures into the tables. */
export async function readDataset(
  dataset: OpenDataset,
  writer: ResultsWriter,
  loadReader: LoadReader,
  onProgress: OnProgress,
): Promise<{ problems: Problem[]; phones: number }> {
  const problems: Problem[] = [];
  let phones = 0;
  const options = { loadReader, texts: "all", task: `Reading ${dataset.card.id}`, onProgress } as const;
  for await (const result of readUtterances(dataset, options)) {
    problems.push(...result.problems);
    writer.utterances.append(utteranceRow(result));
    for (const set of result.labelled) {
      const context = tokenContext(result, set);
      for (const row of toIntervalRows(set.intervals, context)) writer.intervals.append(row);
      for (const row of toTokens(set.intervals, context)) writer.tokens.append(row);
      phones += set.phones;
    }
  }
  return { problems, phones };
}

function tokenContext({ utterance, read }: ReadResult, { labelSet, readingFits }: LabelledSet): TokenContext {
  return {
    dataset: utterance.dataset,
    labelSet: labelSet.id,
    speaker: utterance.speaker,
    utterance: utterance.id,
    timeBasis: labelSet.timeBasis,
    timeFloorMs: labelSet.timeFloorMs,
    devoicingBasis: labelSet.devoicingBasis,
    wordOfMora: readingFits === true ? read.wordOfMora : null,
  };
}

function utteranceRow({ utterance, read, labelled }: ReadResult) {
  const fits = labelled.flatMap(({ readingFits }) => (readingFits === null ? [] : [readingFits]));
  return {
    dataset: utterance.dataset,
    utterance: utterance.id,
    speaker: utterance.speaker,
    style: utterance.style,
    text: utterance.text,
    reading: read.reading?.kana ?? null,
    readingFrom: read.reading?.from ?? null,
    audio: utterance.audio,
    labelSets: labelled.filter(({ intervals }) => intervals.length > 0).length,
    readingFits: fits.length === 0 ? null : fits.every(Boolean),
  };
}
