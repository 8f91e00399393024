import { interceptLeftOut, oneItem, oneSpeakerItems, onlyOneOfBoth } from "../../messages/explain.ts";
import { clusteredCovariance } from "../../statistics/models/clusteredCovariance.ts";
import { cannotBeEstimated, type Outcome } from "../../statistics/models/outcome.ts";
import type { RegressionFit } from "../../statistics/models/regressionFit.ts";
import type { CategoricalColumn } from "../../statistics/models/term.ts";
import type { Errors } from "./effects.ts";
import type { Items } from "./modelColumns.ts";

/** Speakers and items (words or sound frames) of the rows of the model's columns. */
export interface Groupings {
  readonly speakers: CategoricalColumn;
  readonly items: Items;
}

export interface ClusteredErrors {
  /** Covariances to choose the widest interval from. */
  readonly covariances: readonly Errors[];
  readonly units: readonly string[];
}

/** Distinct codes in the given rows. */
export function groupCount({ codes }: CategoricalColumn, rows: Uint32Array): number {
  return new Set(Array.from(rows, (row) => codes[row]!)).size;
}

/**
 * Errors clustered by speaker, by item, and by both at once (by one plus by the other less by their combination;
 * Cameron, Gelbach & Miller 2011, JBES 29:238–249), as far as there are at least two of each. The widest is to count:
 * by speaker alone, a trait of words would seem as certain as its tokens are many. Of both at once only contrasts
 * wider than by one alone are of use, since the difference can be too small, even negative.
 */
export function clusteredErrors(
  fit: RegressionFit,
  { speakers, items }: Groupings,
): Outcome<ClusteredErrors> {
  const { rows } = fit.design;
  const clusterings = [
    { unit: "speaker", column: speakers },
    { unit: items.unit, column: items.column },
  ].filter(({ column }) => groupCount(column, rows) > 1);
  if (clusterings.length === 0) return cannotBeEstimated(onlyOneOfBoth(items.unit));
  const covariances: Errors[] = [];
  const notices: string[] = [];
  for (const { unit, column } of clusterings) {
    const found = clusteredCovariance(fit, column.codes, "CR2", unit);
    if (found.status !== "ok") return cannotBeEstimated(found.reason, found.notices);
    const { covariance, degreesOfFreedom } = found.fit;
    covariances.push({ covariance, degreesOfFreedom: remembered(degreesOfFreedom) });
    notices.push(...found.notices);
  }
  const [first, second] = covariances;
  if (first && second) {
    const together = clusteredCovariance(fit, pairCodes(speakers.codes, items.column), "CR1");
    if (together.status !== "ok") return cannotBeEstimated(together.reason, together.notices);
    const part = together.fit.covariance;
    covariances.push({
      covariance: first.covariance.map((value, at) => value + second.covariance[at]! - part[at]!),
      degreesOfFreedom: (contrast) =>
        Math.min(first.degreesOfFreedom(contrast), second.degreesOfFreedom(contrast)),
    });
  } else notices.push(clusterings[0]!.unit === "speaker" ? oneItem(items.unit) : oneSpeakerItems(items.unit));
  return { status: "ok", fit: { covariances, units: clusterings.map(({ unit }) => unit) }, notices };
}

function pairCodes(speakers: CategoricalColumn["codes"], items: CategoricalColumn): Float64Array {
  return Float64Array.from(speakers, (code, i) => code * items.labels.length + items.codes[i]!);
}

/** Degrees of freedom of a contrast cost much and are asked for more than once. */
function remembered(degreesOfFreedom: Errors["degreesOfFreedom"]): Errors["degreesOfFreedom"] {
  const known = new Map<string, number>();
  return (contrast) => {
    const key = Array.from(contrast).join();
    const found = known.get(key) ?? degreesOfFreedom(contrast);
    known.set(key, found);
    return found;
  };
}

/** Random intercepts that the rows can tell, and what is said of those they cannot. */
export function interceptsOf(
  { speakers, items }: Groupings,
  rows: Uint32Array,
): { readonly intercepts: Readonly<Record<string, CategoricalColumn>>; readonly notices: readonly string[] } {
  const intercepts: Record<string, CategoricalColumn> = {};
  const notices: string[] = [];
  for (const [unit, column] of [
    ["speaker", speakers],
    [items.unit, items.column],
  ] as const) {
    const groups = groupCount(column, rows);
    if (groups > 1 && groups < rows.length) intercepts[unit] = column;
    else notices.push(interceptLeftOut(unit, groups));
  }
  return { intercepts, notices };
}
