import { isEvidence } from "../../basis.ts";
import {
  alignedTimes,
  floorPullsTogether,
  leftOutOfModels,
  noDurations,
  rateIsPartOfDuration,
  vowelPopulation,
  wordsUnknown,
} from "../../messages/explain.ts";
import { designMatrix } from "../../statistics/models/designMatrix.ts";
import { labelAt, type TokenTable } from "../tokenTable.ts";
import { contradictions } from "./contradictions.ts";
import { consonantClass, durationColumns } from "./durationColumns.ts";
import { everyNthRecording } from "./everyNthRecording.ts";
import type { Explanation } from "./explanation.ts";
import { clusteredModel, mixedModel } from "./fitModels.ts";
import { leftOutOf, withTokensInAll } from "./leftOut.ts";
import { itemsOf, speakersOf } from "./modelColumns.ts";
import { muchWiderEffects } from "./muchWiderEffects.ts";
import { type Source, sourcesOf } from "./sources.ts";
import { speakerWarnings } from "./speakerWarnings.ts";
import { knownRows, usableTerms } from "./usableTerms.ts";

export interface DurationOptions {
  /** Share of intervals that should hold the truth. Default 0.95. */
  readonly level?: number;
}

/**
 * What decides how long a vowel between consonants lasts: linear models of log duration on vowel, length, class of C1
 * and C2, accent, place, devoicing (where its mark is evidence) and speech rate; one a dataset and label set. Effects
 * are ratios of durations. The second model (REML) has random intercepts for speaker and word. What cannot be
 * estimated says why.
 */
export function explainDuration(table: TokenTable, { level = 0.95 }: DurationOptions = {}): Explanation[] {
  return sourcesOf(table).map((source) => explainSource(table, source, level));
}

function explainSource(
  table: TokenTable,
  { dataset, labelSet, rows: all }: Source,
  level: number,
): Explanation {
  const { labels, numbers } = table;
  const between = labelTest(labels.before, (phone) => consonantClass(phone) !== null);
  const until = labelTest(labels.after, (phone) => consonantClass(phone) !== null);
  const measured = all.filter(
    (row) =>
      labelAt(labels.kind, row) === "vowel" && between(row) && until(row) && numbers.durationMs[row]! > 0,
  );
  const { rows, warnings: ofSize } = everyNthRecording(table, measured);
  const logMs = Float64Array.from(rows, (row) => Math.log(numbers.durationMs[row]!));
  const speakers = speakersOf(table, rows);
  const items = itemsOf(table, rows);
  const timeBasis = (rows.length === 0 ? null : labelAt(labels.timeBasis, rows[0]!)) as Explanation["basis"];
  const head = {
    outcome: "duration" as const,
    ...{ dataset, labelSet, basis: timeBasis, level, population: vowelPopulation() },
    tokens: rows.length,
    speakers: speakers.labels.length,
    words: items.unit === "word" ? items.column.labels.filter((label) => label !== null).length : null,
    average: rows.length === 0 ? null : Math.exp(logMs.reduce((sum, x) => sum + x, 0) / rows.length),
    separated: [],
  };
  if (rows.length === 0) return { ...head, reason: noDurations(), models: [], warnings: [] };

  const withDevoicing = rows.every((row) => isEvidence(labelAt(labels.devoicedBasis, row) as never));
  const { columns, warnings: unknown } = usableTerms(durationColumns(table, rows, withDevoicing));
  const known = { ...columns, [items.unit]: items.column };
  const kept = knownRows(known, rows.length);
  const made = designMatrix(
    known,
    Object.keys(columns).map((column) => ({ column })),
    { counts: kept, known: [items.unit] },
  );
  const atFloor = rows.filter((row) => labelAt(labels.atFloor, row) === "true").length / rows.length;
  const warnings = [
    ...ofSize,
    ...speakerWarnings(head.speakers),
    ...(items.unit === "word" ? [] : [wordsUnknown()]),
    ...unknown,
    ...(timeBasis === "aligned" ? [alignedTimes()] : []),
    ...(atFloor > 0 ? [floorPullsTogether(atFloor)] : []),
    rateIsPartOfDuration(),
  ];
  if (made.status !== "ok") return { ...head, reason: made.reason, models: [], warnings };
  const data = {
    design: made.design,
    groupings: { speakers, items },
    outcome: logMs,
    options: { level, speakers, devoiced: null, units: { speechRate: "mora/s" } },
  };
  const models = withTokensInAll([clusteredModel(data), mixedModel(data)], columns, rows.length);
  const leftOut = leftOutOf(known, rows.length);
  const ofCounts =
    leftOut.length === 0 ? [] : [leftOutOfModels(made.design.rows.length, rows.length, leftOut)];
  return {
    ...head,
    reason: null,
    leftOut,
    models,
    warnings: [
      ...ofCounts,
      ...warnings,
      ...contradictions(models, columns, items, kept),
      ...muchWiderEffects(models),
    ],
  };
}

function labelTest(
  { codes, labels }: TokenTable["labels"]["before"],
  test: (label: string) => boolean,
): (row: number) => boolean {
  const passes = labels.map((label) => label !== null && test(label));
  return (row) => passes[codes[row]!]!;
}
