import { quadraticForm } from "../../statistics/linearAlgebra/square.ts";
import { clusteredCovariance } from "../../statistics/models/clusteredCovariance.ts";
import { halfWidth } from "../../statistics/models/coefficientTable.ts";
import { type Design, designMatrix } from "../../statistics/models/designMatrix.ts";
import { encodeRows } from "../../statistics/models/encodeRows.ts";
import { fitLogistic, type LogisticFit } from "../../statistics/models/fitLogistic.ts";
import type { CategoricalColumn, Term } from "../../statistics/models/term.ts";
import type { DevoicingCell } from "./devoicingEvidence.ts";

export const factors = ["vowel", "before", "after", "accent", "row"] as const;
export type Levels = Readonly<Record<(typeof factors)[number], string>>;

export interface Predicted {
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
}

export interface DevoicingModel {
  /** True when C1 and C2 act together and not each on its own. */
  readonly interaction: boolean;
  readonly speakers: number;
  /** The chance at these levels; null when the data hold no token of one of them. */
  predict(levels: Levels): Predicted | null;
}

/** What may act together, from nothing on; what lowers Akaike's criterion most is taken. */
const interactionsTried: readonly (readonly (readonly ("vowel" | "before" | "after")[])[])[] = [
  [],
  [["before", "after"]],
  [["vowel", "after"]],
  [
    ["before", "after"],
    ["vowel", "after"],
  ],
];

/** Below this many devoiceable vowels no model is fitted: one share for all of them says as much. */
export const leastForModel = 60;

/**
 * Logistic regression of devoicing on vowel, C1, C2, accent and a devoiceable neighbour, by Firth's method, which stays
 * finite where all or none of a kind are devoiced; C1 and C2, and vowel and C2, interact where that lowers Akaike's criterion. Intervals
 * are clustered by speaker, or by word where that is wider. Null when there is too little to fit it.
 */
export function devoicingModel(cells: readonly DevoicingCell[], level: number): DevoicingModel | null {
  const trials = Float64Array.from(cells, ({ tokens }) => tokens);
  if (trials.reduce((sum, n) => sum + n, 0) < leastForModel) return null;
  const successes = Float64Array.from(cells, ({ devoiced }) => devoiced);
  const columns = Object.fromEntries(
    factors.map((name) => [name, columnOf(cells.map((cell) => cell[name]))]),
  );
  const used = factors.filter((name) => columns[name]!.labels.length > 1);
  const main: Term[] = used.map((column) => ({ column }));
  let better: LogisticFit | null = null;
  let acting = false;
  for (const pairs of interactionsTried) {
    if (!pairs.flat().every((name) => used.includes(name))) continue;
    const terms = [...main, ...pairs.map((pair) => ({ interaction: pair }))];
    const found = fitTerms(columns, terms, successes, trials);
    if (found === null || (better !== null && akaike(found) >= akaike(better))) continue;
    better = found;
    acting = pairs.some((pair) => pair[0] === "before");
  }
  if (better === null) return null;
  const errors = clusteredErrors(better, cells);
  return {
    interaction: acting,
    speakers: new Set(cells.map(({ speaker }) => speaker)).size,
    predict: (levels) => predict(better.design, better.coefficients, errors, columns, levels, level),
  };
}

function columnOf(values: readonly string[]): CategoricalColumn & { labels: string[] } {
  const labels = [...new Set(values)].sort();
  const place = new Map(labels.map((label, at) => [label, at]));
  return { labels, codes: Uint16Array.from(values, (value) => place.get(value)!) };
}

function fitTerms(
  columns: Record<string, CategoricalColumn>,
  terms: Term[],
  successes: Float64Array,
  trials: Float64Array,
): LogisticFit | null {
  const made = designMatrix(columns, terms, { counts: trials });
  if (made.status !== "ok") return null;
  const outcome = fitLogistic(made.design, successes, trials, { method: "Firth" });
  return outcome.status === "ok" ? outcome.fit : null;
}

const akaike = ({ logLikelihood, coefficients }: LogisticFit) => 2 * (coefficients.length - logLikelihood);

/** A covariance of the coefficients with the degrees of freedom of its t intervals. */
interface Errors {
  readonly covariance: Float64Array;
  readonly df: number;
}

/** Errors as if tokens were independent, as if speakers were, and as if words were: the widest interval counts. */
function clusteredErrors(fit: LogisticFit, cells: readonly DevoicingCell[]): Errors[] {
  const speakers = columnOf(cells.map(({ speaker }) => speaker));
  const words = columnOf(cells.map(({ word }) => word));
  // The small-sample correction matters for few clusters; words are many, and it would take long.
  const bySpeaker = clusteredCovariance(fit, speakers.codes, "CR2");
  const byWord = clusteredCovariance(fit, words.codes, "CR1", "word");
  const errors = [{ covariance: fit.covariance, df: Number.POSITIVE_INFINITY }];
  for (const outcome of [bySpeaker, byWord])
    if (outcome.status === "ok")
      errors.push({ covariance: outcome.fit.covariance, df: outcome.fit.clusters - 1 });
  return errors;
}

function predict(
  design: Design,
  coefficients: Float64Array,
  errors: readonly Errors[],
  columns: Readonly<Record<string, CategoricalColumn>>,
  levels: Levels,
  level: number,
): Predicted | null {
  if (factors.some((name) => !columns[name]!.labels.includes(levels[name]))) return null;
  const terms = design.terms.map((term) => ({
    ...term,
    factors: term.factors.map((factor) => ({
      ...factor,
      codes: Uint16Array.of(factor.levels.indexOf(levels[factor.column as keyof Levels])),
    })),
  }));
  const row = encodeRows(1, coefficients.length, terms);
  const x = new Float64Array(coefficients.length);
  for (let at = 0; at < row.column.length; at++) x[row.column[at]!]! += row.value[at]!;
  const eta = x.reduce((sum, value, j) => sum + value * coefficients[j]!, 0);
  const half = Math.max(
    ...errors.map(({ covariance, df }) =>
      halfWidth(Math.sqrt(Math.max(0, quadraticForm(covariance, x))), level, df),
    ),
  );
  return { estimate: logistic(eta), low: logistic(eta - half), high: logistic(eta + half) };
}

const logistic = (x: number) => 1 / (1 + Math.exp(-x));
