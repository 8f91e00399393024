import type { DataColumn } from "../../statistics/models/term.ts";
import { leastOutcomes, leastTokens } from "../../statistics/models/thinLevels.ts";
import { levelCounts } from "./levelCounts.ts";

/**
 * What the levels of a categorical term are best compared with: the first that rests on enough rows of either outcome, so
 * that a thin reference does not make every comparison thin. Empty for numbers, and where no level has enough.
 */
export function sturdyReference(
  column: DataColumn,
  kept: Uint8Array,
  devoiced: Float64Array,
): { readonly reference?: string } {
  if (column instanceof Float64Array) return {};
  const { tokens, devoiced: hits } = levelCounts(column, kept, devoiced);
  const reference = column.labels.find(
    (label, code) =>
      label !== null &&
      tokens[code]! >= leastTokens &&
      Math.min(hits[code]!, tokens[code]! - hits[code]!) >= leastOutcomes,
  );
  return typeof reference === "string" ? { reference } : {};
}
