import { coefficientRow } from "../statistics/models/coefficientTable.ts";
import { designMatrix } from "../statistics/models/designMatrix.ts";
import { fitLinear } from "../statistics/models/fitLinear.ts";
import { fitMixedLinear } from "../statistics/models/fitMixedLinear.ts";
import type { CategoricalColumn } from "../statistics/models/term.ts";
import { clusteredErrors, type Groupings, interceptsOf } from "./explain/clusterings.ts";
import { type Bounded, finite } from "./explain/explanation.ts";

/** A difference in Hz. */
export interface Difference extends Bounded {
  /** The same by a model with random intercepts for speaker and word; null where it cannot be had. */
  readonly mixed: Bounded | null;
}

/**
 * Second level of `side` minus the first in `values`, each speaker compared with itself (a mean of their own each),
 * errors clustered by speaker, by word and by both, the widest counting. Beside it the mixed model (REML), which
 * assumes the same difference for every speaker.
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
  const within = designMatrix(columns, [{ column: "side" }, { column: "speaker" }], { known });
  if (within.status !== "ok") return { reason: within.reason };
  const plain = fitLinear(within.design, values);
  if (plain.status !== "ok") return { reason: plain.reason };
  const place = within.design.coefficients.findIndex(({ parts }) => parts[0]?.column === "side");
  const errors = clusteredErrors(plain.fit, groupings);
  if (errors.status !== "ok") return { reason: errors.reason };
  if (place < 0) return { reason: within.design.notices.join(" ") };
  const widest = errors.fit.covariances
    .map((one) => coefficientRow(plain.fit, one.covariance, place, { ...one, level }))
    .reduce((best, row) => (row.high - row.low > best.high - best.low ? row : best));
  return {
    difference: { ...bounds(widest), mixed: mixedDifference(columns, known, values, groupings, level) },
    notices: errors.notices,
  };
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
