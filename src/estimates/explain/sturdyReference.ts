import type { DataColumn } from "../../statistics/models/term.ts";
import { leastOutcomes, leastTokens } from "../../statistics/models/thinLevels.ts";

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
  const tokens = new Float64Array(column.labels.length);
  const hits = new Float64Array(column.labels.length);
  for (let i = 0; i < kept.length; i++) {
    if (kept[i] === 0) continue;
    tokens[column.codes[i]!]! += 1;
    hits[column.codes[i]!]! += devoiced[i]!;
  }
  const reference = column.labels.find(
    (label, code) =>
      label !== null &&
      tokens[code]! >= leastTokens &&
      Math.min(hits[code]!, tokens[code]! - hits[code]!) >= leastOutcomes,
  );
  return typeof reference === "string" ? { reference } : {};
}
