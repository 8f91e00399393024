import { impossibleCounts, valueNotFinite } from "../../messages/models.ts";
import type { Design } from "./designMatrix.ts";

/** Successes and trials of each design row, or the reason why they cannot be used. */
export function countsOfRows(
  design: Design,
  successes: ArrayLike<number>,
  trials: ArrayLike<number>,
): { readonly successes: Float64Array; readonly trials: Float64Array } | { readonly reason: string } {
  const { rows } = design;
  const k = new Float64Array(rows.length);
  const n = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i]!;
    k[i] = successes[row]!;
    n[i] = trials[row]!;
    if (!Number.isFinite(k[i]!)) return { reason: valueNotFinite("The count of marked tokens", row, k[i]!) };
    if (!Number.isFinite(n[i]!)) return { reason: valueNotFinite("The count of tokens", row, n[i]!) };
    if (k[i]! < 0 || k[i]! > n[i]!) return { reason: impossibleCounts(row, k[i]!, n[i]!) };
  }
  return { successes: k, trials: n };
}
