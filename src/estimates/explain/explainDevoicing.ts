import {
  devoiceablePopulation,
  finalIsBeforePause,
  leftOutOfModels,
  mayBeLong,
  noDevoiceableVowels,
  noMarks,
  onlyPredictedMarks,
  separatedLeftOut,
  tellsEveryOutcome,
  undecidedLeftOut,
  wordsUnknown,
} from "../../messages/explain.ts";
import { allTheSameOutcome } from "../../messages/models.ts";
import { isDevoiceable } from "../../phonology/environment.ts";
import { designMatrix } from "../../statistics/models/designMatrix.ts";
import { labelAt, type TokenTable } from "../tokenTable.ts";
import { contradictions } from "./contradictions.ts";
import { devoicingColumns, type WordFrequency } from "./devoicingColumns.ts";
import { everyNthRecording } from "./everyNthRecording.ts";
import { evidenceOf } from "./evidence.ts";
import type { Explanation } from "./explanation.ts";
import { clusteredModel, mixedModel } from "./fitModels.ts";
import { leftOutOf, withTokensInAll } from "./leftOut.ts";
import { itemsOf, speakersOf } from "./modelColumns.ts";
import { muchWiderEffects } from "./muchWiderEffects.ts";
import { setAsideSeparated } from "./setAsideSeparated.ts";
import { type Source, sourcesOf } from "./sources.ts";
import { speakerWarnings } from "./speakerWarnings.ts";
import { sturdyReference } from "./sturdyReference.ts";
import { knownRows, usableTerms } from "./usableTerms.ts";

export interface DevoicingOptions {
  /** Share of intervals that should hold the truth. Default 0.95. */
  readonly level?: number;
  /** Occurrences of a word per million, from a list outside the corpus. Default: unknown, no such term. */
  readonly wordFrequency?: WordFrequency;
}

/**
 * What decides devoicing where it may happen: logistic models on vowel, class of C1 and C2, accent, place, a devoiceable
 * neighbour, speech rate and word frequency; one a dataset and label set, over marks that are evidence. The first model
 * has errors clustered by speaker and word, the second random intercepts for both. What cannot be estimated says why.
 */
export function explainDevoicing(table: TokenTable, options: DevoicingOptions = {}): Explanation[] {
  return sourcesOf(table).map((source) => explainSource(table, source, options));
}

function explainSource(
  table: TokenTable,
  { dataset, labelSet, rows: all }: Source,
  { level = 0.95, wordFrequency }: DevoicingOptions,
): Explanation {
  const candidates = all.filter((row) => mayDevoice(table, row));
  const evidence = evidenceOf(table, candidates);
  const { basis, marked } = evidence;
  const { rows, warnings: ofSize } = everyNthRecording(table, evidence.rows);
  const ofNoLength = rows.filter((row) => labelAt(table.labels.length, row) === null).length;
  const undecided = basis === null ? 0 : candidates.length - marked;
  const ofBasis = [
    ...(undecided > 0 ? [undecidedLeftOut(undecided)] : []),
    ...(ofNoLength > 0 ? [mayBeLong(ofNoLength)] : []),
    ...evidence.warnings,
    ...ofSize,
  ];
  const devoiced = Float64Array.from(rows, (row) => (labelAt(table.labels.devoiced, row) === "true" ? 1 : 0));
  const hits = devoiced.reduce((sum, value) => sum + value, 0);
  const speakers = speakersOf(table, rows);
  const items = itemsOf(table, rows);
  const head = {
    outcome: "devoicing" as const,
    ...{ dataset, labelSet, basis, level, population: devoiceablePopulation() },
    tokens: rows.length,
    speakers: speakers.labels.length,
    words: items.unit === "word" ? items.column.labels.filter((label) => label !== null).length : null,
    average: rows.length === 0 ? null : hits / rows.length,
  };
  const refuse = (reason: string): Explanation => ({
    ...head,
    reason,
    separated: [],
    models: [],
    warnings: ofBasis,
  });
  if (candidates.length === 0) return refuse(noDevoiceableVowels());
  if (basis === null)
    return refuse(marked === 0 ? noMarks(candidates.length) : onlyPredictedMarks(candidates.length));
  if (hits === 0 || hits === rows.length) return refuse(allTheSameOutcome(hits, rows.length));

  const { columns, warnings: unknown } = usableTerms(devoicingColumns(table, rows, wordFrequency));
  const known = { ...columns, [items.unit]: items.column };
  const { kept, separated, telling } = setAsideSeparated(columns, knownRows(known, rows.length), devoiced);
  const leftOut = leftOutOf(known, rows.length, separated);
  const left = kept.reduce((sum, keep) => sum + keep, 0);
  const warnings = [
    ...(leftOut.length === 0 ? [] : [leftOutOfModels(left, rows.length, leftOut)]),
    ...ofBasis,
    ...speakerWarnings(head.speakers),
    ...(items.unit === "word" ? [] : [wordsUnknown()]),
    ...unknown,
    ...separated.map((one) => separatedLeftOut(one.term, one.level, one.devoiced, one.tokens)),
    finalIsBeforePause(),
  ];
  const leftDevoiced = kept.reduce((sum, keep, i) => sum + keep * devoiced[i]!, 0);
  if (left > 0 && (leftDevoiced === 0 || leftDevoiced === left))
    return { ...refuse(allTheSameOutcome(leftDevoiced, left)), separated, warnings };
  if (telling.length > 0)
    return {
      ...refuse(tellsEveryOutcome(telling[0]!.term, telling)),
      separated: [...separated, ...telling],
      warnings,
    };
  const terms = Object.entries(columns).map(([column, values]) => ({
    column,
    ...sturdyReference(values, kept, devoiced),
  }));
  const made = designMatrix(known, terms, { counts: kept, known: [items.unit] });
  if (made.status !== "ok") return { ...refuse(made.reason), separated, warnings };
  const data = {
    design: made.design,
    groupings: { speakers, items },
    outcome: devoiced,
    options: { level, speakers, devoiced, units: { speechRate: "mora/s", wordFrequency: "tenfold" } },
  };
  const models = withTokensInAll([clusteredModel(data), mixedModel(data)], columns, rows.length);
  return {
    ...head,
    reason: null,
    separated,
    leftOut,
    models,
    warnings: [...warnings, ...contradictions(models, columns, items, kept), ...muchWiderEffects(models)],
  };
}

function mayDevoice({ labels }: TokenTable, row: number): boolean {
  return (
    labelAt(labels.length, row) !== "long" &&
    isDevoiceable(
      labelAt(labels.before, row) ?? "",
      labelAt(labels.phone, row) ?? "",
      labelAt(labels.after, row) ?? "",
    )
  );
}
