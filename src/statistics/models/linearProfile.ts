import { cholesky, choleskyLogDeterminant } from "../linearAlgebra/cholesky.ts";
import { invertPositiveDefinite } from "../linearAlgebra/invertPositiveDefinite.ts";
import { type SparseRows, transposeMultiply, weightedGram } from "../linearAlgebra/sparseRows.ts";
import { multiplyVector, quadraticForm } from "../linearAlgebra/square.ts";
import type { CrossedGroups } from "./crossedGroups.ts";
import { CrossedSystem, emptySums, type GroupSums } from "./crossedSystem.ts";
import { groupedSums } from "./fixedInformation.ts";

/** What the intercepts' scales (in units of the residual standard deviation) imply, everything else profiled out. */
export interface LinearProfile {
  readonly deviance: number;
  readonly gradient: Float64Array;
  readonly coefficients: Float64Array;
  /** Inverse of the information about the coefficients, to be multiplied by the residual variance. */
  readonly inverseInformation: Float64Array;
  readonly residualVariance: number;
  /** Most likely intercepts in the unit of the response. */
  readonly modes: { readonly few: Float64Array; readonly many: Float64Array };
}

/** Column-wise parts of the normal equations by group: for each design column, then the response. */
interface Column {
  readonly few: Float64Array;
  readonly many: Float64Array;
}

/**
 * Prepares a linear model with crossed intercepts so that a pair of scales is judged without touching the rows
 * again: by maximum likelihood or, with `reml`, by restricted maximum likelihood (Bates et al. 2015, JSS 67:1).
 * Returns null for scales where numbers break down. The first scale is absent when there is one grouping.
 */
export function linearProfile(
  matrix: SparseRows,
  response: Float64Array,
  tokens: Float64Array,
  withinSumOfSquares: number,
  groups: CrossedGroups,
  reml: boolean,
): (scales: Float64Array) => LinearProfile | null {
  const k = matrix.columns;
  const n = tokens.reduce((sum, count) => sum + count, 0);
  const system = new CrossedSystem(groups);
  const weights = sumsOf(groups, tokens);
  const inverse = emptySums(groups);
  const weighted = response.map((value, i) => value * tokens[i]!);
  const gram = weightedGram(matrix, tokens);
  const cross = transposeMultiply(matrix, weighted);
  const square = response.reduce((sum, value, i) => sum + value * weighted[i]!, withinSumOfSquares);
  const responseSums = sumsOf(groups, weighted);
  const columns: Column[] = [...columnsOf(matrix, tokens, groups), responseSums];
  const crossed = groups.fewCount > 0;

  return (scales) => {
    const thetaFew = crossed ? scales[0]! : 0;
    const thetaMany = scales[crossed ? 1 : 0]!;
    if (!system.factorise(thetaFew, thetaMany, weights)) return null;
    const solved = columns.map(({ few, many }) => {
      const own = { few: few.map((value) => value * thetaFew), many: many.map((value) => value * thetaMany) };
      system.solve(own.few, own.many);
      return own;
    });
    const taken = (a: number, b: number) =>
      thetaFew * dot(columns[a]!.few, solved[b]!.few) + thetaMany * dot(columns[a]!.many, solved[b]!.many);
    const information = gram.map((value, at) => value - taken(Math.floor(at / k), at % k));
    const inverseInformation = invertPositiveDefinite(information, k);
    if (!inverseInformation) return null;
    const right = cross.map((value, a) => value - taken(a, k));
    const coefficients = multiplyVector(inverseInformation, right);
    const residualSquare = square - taken(k, k) - dot(right, coefficients);
    if (!(residualSquare > 0)) return null;

    const df = reml ? n - k : n;
    const residualVariance = residualSquare / df;
    let deviance = system.logDeterminant() + df * (1 + Math.log(2 * Math.PI * residualVariance));
    if (reml) deviance -= logDeterminantOf(inverseInformation, k);

    system.inverseEntries(inverse);
    const between = dot(weights.pair, inverse.pair);
    const traceFew = 2 * (thetaFew * dot(weights.few, inverse.few) + thetaMany * between);
    const traceMany = 2 * (thetaMany * dot(weights.many, inverse.many) + thetaFew * between);
    const left = columns.map((column, j) =>
      leftOver(groups, weights, column, solved[j]!, thetaFew, thetaMany),
    );
    const towards = (part: "few" | "many", theta: number, trace: number) => {
      const size = left[0]![part].length;
      let squares = 0;
      let spread = 0;
      const row = new Float64Array(k);
      for (let g = 0; g < size; g++) {
        for (let j = 0; j < k; j++) row[j] = left[j]![part][g]!;
        squares += (left[k]![part][g]! - dot(row, coefficients)) ** 2;
        if (reml) spread += quadraticForm(inverseInformation, row);
      }
      return trace - 2 * theta * (squares / residualVariance + spread);
    };
    const ofMany = towards("many", thetaMany, traceMany);
    const gradient = crossed
      ? Float64Array.of(towards("few", thetaFew, traceFew), ofMany)
      : Float64Array.of(ofMany);
    const mode = (part: "few" | "many", theta: number) =>
      solved[k]![part].map(
        (value, g) => theta * (value - coefficients.reduce((sum, b, j) => sum + b * solved[j]![part][g]!, 0)),
      );
    const modes = { few: mode("few", thetaFew), many: mode("many", thetaMany) };
    return { deviance, gradient, coefficients, inverseInformation, residualVariance, modes };
  };
}

function sumsOf(groups: CrossedGroups, values: Float64Array): GroupSums {
  const sums = emptySums(groups);
  for (let i = 0; i < groups.rows; i++) {
    sums.many[groups.many[i]!]! += values[i]!;
    if (groups.fewCount === 0) continue;
    sums.few[groups.few[i]!]! += values[i]!;
    sums.pair[groups.pairOfRow[i]!]! += values[i]!;
  }
  return sums;
}

function columnsOf(matrix: SparseRows, tokens: Float64Array, groups: CrossedGroups): Column[] {
  const k = matrix.columns;
  const few = groupedSums(matrix, tokens, groups.few, groups.fewCount);
  const many = groupedSums(matrix, tokens, groups.many, groups.manyCount);
  return Array.from({ length: k }, (_, j) => ({
    few: Float64Array.from({ length: groups.fewCount }, (_, g) => few[g * k + j]!),
    many: Float64Array.from({ length: groups.manyCount }, (_, g) => many[g * k + j]!),
  }));
}

/** Zᵀ·V⁻¹·column: its sums by group less what the solved intercepts account for. */
function leftOver(
  groups: CrossedGroups,
  weights: GroupSums,
  column: Column,
  solved: Column,
  thetaFew: number,
  thetaMany: number,
): Column {
  const few = column.few.map((value, s) => value - thetaFew * weights.few[s]! * solved.few[s]!);
  const many = column.many.map((value, w) => value - thetaMany * weights.many[w]! * solved.many[w]!);
  for (let w = 0; w < groups.manyCount; w++)
    for (let p = groups.pairStart[w]!; p < groups.pairStart[w + 1]!; p++) {
      const s = groups.pairFew[p]!;
      few[s]! -= thetaMany * weights.pair[p]! * solved.many[w]!;
      many[w]! -= thetaFew * weights.pair[p]! * solved.few[s]!;
    }
  return { few, many };
}

function logDeterminantOf(positiveDefinite: Float64Array, n: number): number {
  const factor = Float64Array.from(positiveDefinite);
  return cholesky(factor, n) ? choleskyLogDeterminant(factor, n) : Number.NaN;
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
