import { noSpeakerWithBoth } from "../messages/explain.ts";
import { coefficientRow } from "../statistics/models/coefficientTable.ts";
import { designMatrix } from "../statistics/models/designMatrix.ts";
import { fitLinear } from "../statistics/models/fitLinear.ts";
import { fitMixedLinear } from "../statistics/models/fitMixedLinear.ts";
import type { CategoricalColumn } from "../statistics/models/term.ts";
import { clusteredErrors, type Groupings, groupCount, interceptsOf } from "./explain/clusterings.ts";
import { type Bounded, finite } from "./explain/explanation.ts";

/** A difference in Hz. */
export interface Difference extends Bounded {
  /** The same by a model with random intercepts for speaker and word; null where it cannot be had. */
  readonly mixed: Bounded | null;
}

/**
 * Second level of `side` minus the first in `values`, each speaker compared with itself, errors clustered by speaker, by
 * word and by both, the widest counting. Beside it the mixed model (REML), which assumes the same difference for every
 * speaker. Speakers' means are taken out beforehand, which gives the same difference as a coefficient for every speaker
 * (Frisch R. & Waugh F. V. (1933) Econometrica 1:387–401) at a cost that does not grow with their number.
 */
export function colouringDifference(
  side: CategoricalColumn,
  values: Float64Array,
  groupings: Groupings,
  level: number,
): { readonly difference: Difference; readonly notices: readonly string[] } | { readonly reason: string } {
  const { speakers, items } = groupings;
  const columns = { side, speaker: speakers, [items.unit]: items.column };
  const known = [items.unit, "speaker"];
  const whole = designMatrix(columns, [{ column: "side" }], { known });
  if (whole.status !== "ok") return { reason: whole.reason };
  const { rows, notices } = whole.design;
  if (whole.design.coefficients.length < 2) return { reason: notices.join(" ") };
  const second = Float64Array.from(side.codes, (code) => (side.labels[code] === side.labels[1] ? 1 : 0));
  const own = { second: withoutMeans(second, speakers, rows), values: withoutMeans(values, speakers, rows) };
  if (own.second.every((value) => Number.isNaN(value) || Math.abs(value) < 1e-9))
    return { reason: noSpeakerWithBoth() };
  const within = designMatrix({ second: own.second }, [{ column: "second" }], { intercept: false });
  if (within.status !== "ok") return { reason: within.reason };
  const plain = fitLinear(within.design, own.values);
  if (plain.status !== "ok") return { reason: plain.reason };
  const errors = clusteredErrors(plain.fit, groupings);
  if (errors.status !== "ok") return { reason: errors.reason };
  const met = groupCount(speakers, rows);
  const spent = rows.length / Math.max(1, rows.length - met);
  const widest = errors.fit.covariances
    .map(({ covariance, degreesOfFreedom }) =>
      coefficientRow(plain.fit, Float64Array.of(covariance[0]! * spent), 0, { degreesOfFreedom, level }),
    )
    .reduce((best, row) => (row.high - row.low > best.high - best.low ? row : best));
  return {
    difference: { ...bounds(widest), mixed: mixedDifference(columns, known, values, groupings, level) },
    notices: errors.notices,
  };
}

/** Values less their speaker's mean over `rows`; NaN elsewhere. */
function withoutMeans(
  values: Float64Array,
  { codes, labels }: CategoricalColumn,
  rows: Uint32Array,
): Float64Array {
  const sums = new Float64Array(labels.length);
  const counts = new Float64Array(labels.length);
  for (const row of rows) {
    sums[codes[row]!]! += values[row]!;
    counts[codes[row]!]!++;
  }
  const left = new Float64Array(values.length).fill(Number.NaN);
  for (const row of rows) left[row] = values[row]! - sums[codes[row]!]! / counts[codes[row]!]!;
  return left;
}

function mixedDifference(
  columns: Readonly<Record<string, CategoricalColumn>>,
  known: readonly string[],
  values: Float64Array,
  groupings: Groupings,
  level: number,
): Bounded | null {
  const made = designMatrix(columns, [{ column: "side" }], { known });
  if (made.status !== "ok") return null;
  const { intercepts } = interceptsOf(groupings, made.design.rows);
  if (Object.keys(intercepts).length === 0) return null;
  const mixed = fitMixedLinear(made.design, values, intercepts, { method: "REML" });
  if (mixed.status !== "ok") return null;
  if (mixed.fit.coefficients.length < 2) return null;
  return bounds(coefficientRow(mixed.fit, mixed.fit.covariance, 1, { ...mixed.fit, level }));
}

function bounds({ estimate, low, high }: { estimate: number; low: number; high: number }): Bounded {
  return { estimate, low: finite(low), high: finite(high) };
}
