import { noBounds, separatedWithheld } from "../../messages/explain.ts";
import { benjaminiHochberg } from "../../statistics/benjaminiHochberg.ts";
import { tTwoSidedP } from "../../statistics/distributions.ts";
import { coefficientTable, halfWidth } from "../../statistics/models/coefficientTable.ts";
import type { Design } from "../../statistics/models/designMatrix.ts";
import { type FittedRates, marginalEffects } from "../../statistics/models/marginalEffects.ts";
import type { CategoricalColumn } from "../../statistics/models/term.ts";
import { type Bounded, type Effect, finite } from "./explanation.ts";
import { thinTerms } from "./thinTerms.ts";

/** A covariance of the coefficients with the degrees of freedom of its intervals. */
export interface Errors {
  readonly covariance: Float64Array;
  readonly degreesOfFreedom: (contrast: ArrayLike<number>) => number;
}

export interface EffectOptions {
  readonly level: number;
  readonly speakers: CategoricalColumn;
  /** 1 for a devoiced row of the columns, else 0; null when the model is of durations. */
  readonly devoiced: Float64Array | null;
  /** Unit of each numeric term. */
  readonly units: Readonly<Record<string, string>>;
}

/**
 * Effects of all terms but the intercept; of several `errors` the one with the widest interval counts. What is thin, or
 * separated with other terms, is withheld with its counts (see `Effect.withheld`).
 */
export function effectsOf(
  fit: FittedRates & { readonly separated?: readonly number[] },
  errors: readonly Errors[],
  { level, speakers, devoiced, units }: EffectOptions,
): { readonly effects: readonly Effect[]; readonly notices: readonly string[] } {
  const { design } = fit;
  const { isThin, texts } = thinTerms(design, speakers, devoiced);
  const separated = fit.separated ?? [];
  const tables = errors.map(({ covariance, degreesOfFreedom }) =>
    coefficientTable(fit, covariance, { level, degreesOfFreedom }),
  );
  const margins = devoiced ? errors.map(({ covariance }) => marginalEffects(fit, covariance)) : null;
  const found = design.coefficients.flatMap(({ parts }, j) => {
    if (parts.length !== 1) return [];
    const { column, level: name } = parts[0]!;
    const rows = tables.map((table) => table[j]!);
    const widest = rows.reduce((best, row) => (row.high - row.low > best.high - best.low ? row : best));
    const points = margins?.map((margin, m) => {
      const effect = margin.find((row) => row.column === column && row.level === name)!;
      const half = halfWidth(effect.standardError, level, tables[m]![j]!.degreesOfFreedom);
      return { estimate: effect.percentagePoints, half };
    });
    const widestPoints = points?.reduce((best, one) => (one.half > best.half ? one : best));
    const factor = design.factors.find((one) => one.column === column);
    const counts = countsOf(design, factor?.codes ?? null, factor?.levels.indexOf(name!) ?? 0, speakers);
    const withheld = isThin(column, name) ? "few" : separated.includes(j) ? "separated" : null;
    return {
      term: column,
      level: name,
      reference: factor?.levels[0] ?? null,
      unit: factor ? null : (units[column] ?? null),
      ratio: withheld ? null : bounded(widest.ratio, widest.ratioLow, widest.ratioHigh),
      percentagePoints:
        widestPoints && !withheld
          ? bounded(
              widestPoints.estimate,
              widestPoints.estimate - widestPoints.half,
              widestPoints.estimate + widestPoints.half,
            )
          : null,
      p: withheld ? null : pOf(widest.estimate / widest.standardError, widest.degreesOfFreedom),
      pAdjusted: null as number | null,
      tokens: counts.rows.length,
      speakers: counts.speakers,
      devoiced: devoiced ? counts.rows.reduce((sum, row) => sum + devoiced[row]!, 0) : null,
      withheld: withheld as Effect["withheld"],
    };
  });
  const known = found.filter((effect) => effect.p !== null);
  const adjusted = benjaminiHochberg(known.map((effect) => effect.p!));
  for (const [k, effect] of known.entries()) effect.pAdjusted = adjusted[k]!;
  const unbounded = found.some((effect) => effect.ratio?.low === null);
  const names = separated.map((j) => design.coefficients[j]!).filter(({ parts }) => parts.length > 0);
  return {
    effects: found,
    notices: [
      ...texts,
      ...(names.length > 0 ? [separatedWithheld(names.map(({ name }) => name))] : []),
      ...(unbounded ? [noBounds()] : []),
    ],
  };
}

/** Null where the data say nothing about the error. */
function pOf(t: number, degreesOfFreedom: number): number | null {
  return degreesOfFreedom > 0 ? finite(tTwoSidedP(t, degreesOfFreedom)) : null;
}

function bounded(estimate: number, low: number, high: number): Bounded {
  const open = !Number.isFinite(low) || !Number.isFinite(high);
  return { estimate, low: open ? null : low, high: open ? null : high };
}

/** Rows of the columns at a level (all for a number), and how many speakers they come from. */
function countsOf(design: Design, codes: Uint16Array | null, level: number, speakers: CategoricalColumn) {
  const rows: number[] = [];
  const met = new Set<number>();
  for (let i = 0; i < design.rows.length; i++) {
    if (codes !== null && codes[i] !== level) continue;
    rows.push(design.rows[i]!);
    met.add(speakers.codes[design.rows[i]!]!);
  }
  return { rows, speakers: met.size };
}
