import { impossibleCounts, valueNotFinite } from "../../messages/models.ts";
import type { Design } from "./designMatrix.ts";

/** Successes and trials of each design row, or the reason why they cannot be used. */
export function countsOfRows(
  design: Design,
  successes: ArrayLike<number>,
  trials: ArrayLike<number>,
): { readonly successes: Float64Array; readonly trials: Float64Array } | { readonly reason: string } {
  for (const row of design.rows) {
    const k = successes[row]!;
    const n = trials[row]!;
    if (!Number.isFinite(k)) return { reason: valueNotFinite("The count of marked tokens", row, k) };
    if (!Number.isFinite(n)) return { reason: valueNotFinite("The count of tokens", row, n) };
    if (k < 0 || k > n) return { reason: impossibleCounts(row, k, n) };
  }
  return {
    successes: Float64Array.from(design.rows, (row) => successes[row]!),
    trials: Float64Array.from(design.rows, (row) => trials[row]!),
  };
}
