import { oneSpeakerOnly } from "../messages/estimates.ts";
import {
  errorMethod,
  errorOfSynthetic,
  errorOfThisCorpus,
  marksErrToo,
  nothingJudgedTwice,
  tooFewKind,
} from "../messages/explain.ts";
import { isDevoiceable } from "../phonology/environment.ts";
import type { DecisionAccuracy } from "./correctedRate.ts";
import { type Source, sourcesOf } from "./explain/sources.ts";
import {
  accuracyOf,
  type CalibrationBin,
  calibrationOf,
  type Judged,
  type RightShare,
  rightShare,
} from "./knownErrorShares.ts";
import { rateWarnings } from "./rateSafety.ts";
import { labelAt, type TokenTable } from "./tokenTable.ts";

/** How the devoicing decision does at one cut-off of its probability. */
export interface CutOff {
  /** Called devoiced from this probability on. */
  readonly probability: number;
  readonly sensitivity: number | null;
  readonly specificity: number | null;
}

/** Errors of the devoicing decision in one dataset and label set, against marks that a person (or the maker) gave. */
export interface DecisionError {
  readonly dataset: string;
  readonly labelSet: string;
  /** Which vowels: all, or those where devoicing may happen, on which the decision is harder. */
  readonly vowels: "all vowels" | "devoiceable vowels";
  readonly basis: "annotated";
  readonly level: number;
  readonly method: string;
  readonly synthetic: boolean;
  /** Why there is no error to tell; null when there is. */
  readonly reason: string | null;
  readonly tokens: number;
  readonly speakers: number;
  /** Truly devoiced vowels that are called devoiced; null without any. */
  readonly sensitivity: RightShare | null;
  /** Truly voiced vowels that are called voiced; null without any. */
  readonly specificity: RightShare | null;
  /**
   * For `correctedRate`: hits of the effective number of tokens, so that its intervals for independent tokens are as
   * wide as the clustered ones. Null where either side is empty.
   */
  readonly accuracy: DecisionAccuracy | null;
  /** Stated probability against found share, ten bins of equal width; bins without vowels are left out. */
  readonly calibration: readonly CalibrationBin[];
  readonly cutOffs: readonly CutOff[];
  readonly warnings: readonly string[];
}

export interface DecisionErrorOptions {
  /** Default 0.95. */
  readonly level?: number;
  /** Datasets of machine voices, by id. Default none. */
  readonly synthetic?: readonly string[];
}

const cutOffs = [0.2, 0.35, 0.5, 0.65, 0.8];

/**
 * Sensitivity and specificity of `devoicedHeard` where a label set carries annotated marks and the recordings were
 * measured too, with intervals clustered by speaker, calibration and a sweep over the cut-off. It says how the decision
 * does on these recordings, and nothing of others.
 */
export function knownDecisionError(table: TokenTable, options: DecisionErrorOptions = {}): DecisionError[] {
  return sourcesOf(table).flatMap((source) => [
    errorOf(table, source, "all vowels", options),
    errorOf(table, source, "devoiceable vowels", options),
  ]);
}

function errorOf(
  { labels, numbers }: TokenTable,
  { dataset, labelSet, rows }: Source,
  vowels: DecisionError["vowels"],
  { level = 0.95, synthetic = [] }: DecisionErrorOptions,
): DecisionError {
  const judged: Judged[] = [];
  for (const row of rows) {
    const heard = labelAt(labels.devoicedHeard, row);
    const truth = labelAt(labels.devoiced, row);
    if (labelAt(labels.kind, row) !== "vowel" || heard === null || truth === null) continue;
    if (labelAt(labels.devoicedBasis, row) !== "annotated") continue;
    const long = labelAt(labels.length, row) === "long";
    const [before, phone, after] = [labels.before, labels.phone, labels.after].map(
      (column) => labelAt(column, row) ?? "",
    );
    if (vowels === "devoiceable vowels" && (long || !isDevoiceable(before!, phone!, after!))) continue;
    const speaker = labelAt(labels.speaker, row) ?? "unknown";
    const probability = numbers.devoicedProbability[row]!;
    judged.push({ speaker, heard: heard === "true", truth: truth === "true", probability });
  }
  const speakers = new Set(judged.map(({ speaker }) => speaker)).size;
  const machine = synthetic.includes(dataset);
  const head = {
    ...{ dataset, labelSet, vowels, basis: "annotated" as const, level, synthetic: machine },
    ...{ method: errorMethod(speakers), tokens: judged.length, speakers },
  };
  if (judged.length === 0) {
    const none = { sensitivity: null, specificity: null, accuracy: null, calibration: [], cutOffs: [] };
    return { ...head, ...none, reason: nothingJudgedTwice(), warnings: [] };
  }
  const [devoiced, voiced] = [judged.filter(({ truth }) => truth), judged.filter(({ truth }) => !truth)];
  const sensitivity = rightShare(devoiced, level);
  const specificity = rightShare(voiced, level);
  const warnings = [
    machine ? errorOfSynthetic(dataset) : errorOfThisCorpus(dataset),
    ...(machine ? [] : [marksErrToo()]),
    ...(speakers === 1 ? [oneSpeakerOnly()] : []),
    ...[sensitivity, specificity].flatMap((share) =>
      share === null || speakers === 1 ? [] : rateWarnings(share.rate.method, share.speakers, share.rate),
    ),
    ...(sensitivity === null ? [tooFewKind("devoiced")] : []),
    ...(specificity === null ? [tooFewKind("voiced")] : []),
  ];
  return {
    ...head,
    reason: null,
    sensitivity: sensitivity?.share ?? null,
    specificity: specificity?.share ?? null,
    accuracy: accuracyOf(sensitivity?.share ?? null, specificity?.share ?? null, level),
    calibration: calibrationOf(judged, level),
    cutOffs: cutOffs.map((probability) => ({
      probability,
      sensitivity: shareOf(devoiced, (one) => one.probability >= probability),
      specificity: shareOf(voiced, (one) => one.probability < probability),
    })),
    warnings: [...new Set(warnings)],
  };
}

/** Share of the vowels with a stated probability that pass; null without any. */
function shareOf(vowels: readonly Judged[], passes: (one: Judged) => boolean): number | null {
  const stated = vowels.filter(({ probability }) => !Number.isNaN(probability));
  return stated.length === 0 ? null : stated.filter(passes).length / stated.length;
}
