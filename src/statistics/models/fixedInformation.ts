import type { SparseRows } from "../linearAlgebra/sparseRows.ts";
import { weightedGram } from "../linearAlgebra/sparseRows.ts";
import type { CrossedGroups } from "./crossedGroups.ts";
import type { CrossedSystem } from "./crossedSystem.ts";

/** Sums of weight·x over the rows of each group: groups × coefficients, row after row. */
export function groupedSums(
  matrix: SparseRows,
  weights: Float64Array,
  codes: Uint32Array,
  groups: number,
): Float64Array {
  const { rows, columns, start, column, value } = matrix;
  const sums = new Float64Array(groups * columns);
  if (groups === 0) return sums;
  for (let i = 0; i < rows; i++) {
    const row = codes[i]! * columns;
    for (let k = start[i]!; k < start[i + 1]!; k++) sums[row + column[k]!]! += weights[i]! * value[k]!;
  }
  return sums;
}

/** XᵀWX less what the intercepts take up: the information about the coefficients at a factorised `system`. */
export function fixedInformation(
  matrix: SparseRows,
  weights: Float64Array,
  groups: CrossedGroups,
  system: CrossedSystem,
  thetaFew: number,
  thetaMany: number,
): Float64Array {
  const k = matrix.columns;
  const few = groupedSums(matrix, weights, groups.few, groups.fewCount).map((value) => value * thetaFew);
  const many = groupedSums(matrix, weights, groups.many, groups.manyCount).map((value) => value * thetaMany);
  const information = weightedGram(matrix, weights);
  for (let a = 0; a < k; a++) {
    const fewPart = Float64Array.from({ length: groups.fewCount }, (_, s) => few[s * k + a]!);
    const manyPart = Float64Array.from({ length: groups.manyCount }, (_, w) => many[w * k + a]!);
    system.solve(fewPart, manyPart);
    for (let b = 0; b <= a; b++) {
      let sum = 0;
      for (let s = 0; s < fewPart.length; s++) sum += fewPart[s]! * few[s * k + b]!;
      for (let w = 0; w < manyPart.length; w++) sum += manyPart[w]! * many[w * k + b]!;
      information[a * k + b]! -= sum;
      if (b < a) information[b * k + a] = information[a * k + b]!;
    }
  }
  return information;
}
