import type { SparseRows } from "../linearAlgebra/sparseRows.ts";
import type { Groups } from "./crossedGroups.ts";

/**
 * Degrees of freedom for t intervals of a mixed model's coefficients, by containment (Pinheiro & Bates 2000, section
 * 2.4.2): a coefficient whose column never changes within a group rests on as many groups, less the coefficients
 * of that kind; any other rests on the tokens. A contrast has the fewest of its coefficients. At least 1.
 */
export function containmentDf(
  matrix: SparseRows,
  groupings: readonly Groups[],
  tokens: number,
): (contrast: ArrayLike<number>) => number {
  const k = matrix.columns;
  const constant = groupings.map((groups) => constantWithin(matrix, groups));
  const free = Array.from({ length: k }, (_, j) => constant.every((columns) => columns[j] === 0));
  const groupsInAll = groupings.reduce((sum, { labels }) => sum + labels.length, 0);
  const ofTokens = Math.max(1, tokens - groupsInAll - free.filter(Boolean).length);
  const perCoefficient = free.map((isFree, j) => {
    if (isFree) return ofTokens;
    const counts = groupings.flatMap(({ labels }, g) => {
      const columns = constant[g]!;
      return columns[j] === 1 ? [labels.length - columns.reduce((sum, one) => sum + one, 0)] : [];
    });
    return Math.max(1, Math.min(ofTokens, ...counts));
  });
  return (contrast) => {
    const used = perCoefficient.filter((_, j) => contrast[j] !== 0);
    return used.length > 0 ? Math.min(...used) : ofTokens;
  };
}

/** 1 for each column that has one value in every group. */
function constantWithin(matrix: SparseRows, { codes, labels }: Groups): Uint8Array {
  const { rows, columns, start, column, value } = matrix;
  const first = new Float64Array(labels.length * columns);
  const seen = new Uint8Array(labels.length);
  const row = new Float64Array(columns);
  const constant = new Uint8Array(columns).fill(1);
  for (let i = 0; i < rows; i++) {
    row.fill(0);
    for (let k = start[i]!; k < start[i + 1]!; k++) row[column[k]!]! += value[k]!;
    const at = codes[i]! * columns;
    if (seen[codes[i]!] === 0) {
      seen[codes[i]!] = 1;
      first.set(row, at);
      continue;
    }
    for (let j = 0; j < columns; j++) if (row[j] !== first[at + j]) constant[j] = 0;
  }
  return constant;
}
