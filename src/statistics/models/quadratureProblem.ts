import { multiply, type SparseRows, transposeMultiply } from "../linearAlgebra/sparseRows.ts";
import type { RowsByGroup } from "./crossedGroups.ts";
import { gaussHermite } from "./gaussHermite.ts";
import type { Objective } from "./minimise.ts";

export interface QuadratureProblem {
  readonly evaluate: Objective;
  /** Most likely standardised intercept of each group at the last evaluation. */
  readonly modes: Float64Array;
}

/**
 * −2·log-likelihood, at (theta, coefficients…), of a logistic model with one normal intercept by group, by adaptive
 * Gauss–Hermite quadrature: points are placed about each group's most likely intercept (Pinheiro & Bates 1995,
 * JCGS 4:12–35). With one point it is Laplace's approximation. The gradient is exact, including the moves of the
 * points.
 */
export function quadratureProblem(
  matrix: SparseRows,
  successes: Float64Array,
  trials: Float64Array,
  { start, order }: RowsByGroup,
  points: number,
): QuadratureProblem {
  const groups = start.length - 1;
  const { nodes, weights: nodeWeights } = gaussHermite(points);
  const offsets = nodes.map((z) => Math.SQRT2 * z);
  const logWeights = nodeWeights.map(
    (weight, q) => Math.log(weight) + nodes[q]! ** 2 - Math.log(Math.PI) / 2,
  );
  const largest = start.reduce((most, from, g) => Math.max(most, g === 0 ? 0 : from - start[g - 1]!), 0);
  const residuals = new Float64Array(largest * points);
  const fixedPart = new Float64Array(matrix.rows);
  const rowGradient = new Float64Array(matrix.rows);
  const modes = new Float64Array(groups);
  const at = { value: 0, score: 0, weight: 0, skew: 0 };
  const heights = new Float64Array(points);
  const scores = new Float64Array(points);
  return { evaluate, modes };

  function evaluate(parameters: Float64Array) {
    const theta = parameters[0]!;
    multiply(matrix, parameters.subarray(1), fixedPart);
    let logLikelihood = 0;
    let towardsTheta = 0;
    for (let g = 0; g < groups; g++) {
      if (!findMode(g, theta))
        return { value: Number.POSITIVE_INFINITY, gradient: new Float64Array(parameters.length) };
      const found = integrate(g, theta);
      logLikelihood += found.logLikelihood;
      towardsTheta += found.towardsTheta;
    }
    const gradient = new Float64Array(parameters.length);
    gradient[0] = -2 * towardsTheta;
    gradient.set(
      transposeMultiply(matrix, rowGradient).map((value) => -2 * value),
      1,
    );
    return { value: -2 * logLikelihood, gradient };
  }

  function findMode(g: number, theta: number): boolean {
    let best = Number.NEGATIVE_INFINITY;
    let step = 0;
    for (let round = 0; round < 100; round++) {
      look(g, theta, modes[g]!, null, 0);
      if (!(at.value >= best - 1e-10 * (1 + Math.abs(best)))) {
        step /= 2;
        modes[g]! -= step;
        continue;
      }
      best = at.value;
      const slope = theta * at.score - modes[g]!;
      step = slope / (1 + theta * theta * at.weight);
      if (Math.abs(step * slope) < 1e-22) return true;
      modes[g]! += step;
    }
    modes[g] = 0;
    return false;
  }

  /** Fills `at` for one intercept of a group; keeps each row's residual at `node` when asked. */
  function look(g: number, theta: number, intercept: number, keep: Float64Array | null, node: number): void {
    at.value = (-intercept * intercept) / 2;
    at.score = 0;
    at.weight = 0;
    at.skew = 0;
    for (let k = start[g]!; k < start[g + 1]!; k++) {
      const i = order[k]!;
      const eta = fixedPart[i]! + theta * intercept;
      const small = Math.exp(-Math.abs(eta));
      const share = 1 / (1 + small);
      const chance = eta > 0 ? share : small * share;
      const weight = trials[i]! * share * share * small;
      const residual = successes[i]! - trials[i]! * chance;
      at.value += successes[i]! * eta - trials[i]! * (Math.max(eta, 0) - Math.log(share));
      at.score += residual;
      at.weight += weight;
      at.skew += weight * (1 - 2 * chance);
      if (keep) keep[(k - start[g]!) * points + node] = residual;
    }
  }

  function integrate(g: number, theta: number): { logLikelihood: number; towardsTheta: number } {
    const mode = modes[g]!;
    look(g, theta, mode, null, 0);
    const { score, weight, skew } = at;
    const curvature = 1 + theta * theta * weight;
    const spread = 1 / Math.sqrt(curvature);
    let highest = Number.NEGATIVE_INFINITY;
    for (let q = 0; q < points; q++) {
      look(g, theta, mode + spread * offsets[q]!, residuals, q);
      heights[q] = logWeights[q]! + at.value;
      scores[q] = at.score;
      highest = Math.max(highest, heights[q]!);
    }
    let total = 0;
    for (let q = 0; q < points; q++) total += heights[q] = Math.exp(heights[q]! - highest);
    let tilt = 0;
    let stretch = 1;
    let direct = 0;
    for (let q = 0; q < points; q++) {
      const share = heights[q]! / total;
      heights[q] = share;
      const intercept = mode + spread * offsets[q]!;
      const slope = theta * scores[q]! - intercept;
      tilt += share * slope;
      stretch += share * slope * offsets[q]! * spread;
      direct += share * intercept * scores[q]!;
    }
    const bend = -stretch / (2 * curvature);
    for (let k = start[g]!; k < start[g + 1]!; k++) {
      const i = order[k]!;
      let mean = 0;
      for (let q = 0; q < points; q++) mean += heights[q]! * residuals[(k - start[g]!) * points + q]!;
      const eta = fixedPart[i]! + theta * mode;
      const small = Math.exp(-Math.abs(eta));
      const share = 1 / (1 + small);
      const own = trials[i]! * share * share * small;
      const ownSkew = own * (eta > 0 ? (small - 1) * share : (1 - small) * share);
      const pull = (theta * own) / curvature;
      rowGradient[i] = mean - tilt * pull + bend * theta * theta * (ownSkew - theta * skew * pull);
    }
    const modeMoves = (score - theta * weight * mode) / curvature;
    const curvatureMoves = 2 * theta * weight + theta * theta * skew * (mode + theta * modeMoves);
    return {
      logLikelihood: Math.log(spread) + highest + Math.log(total),
      towardsTheta: direct + tilt * modeMoves + bend * curvatureMoves,
    };
  }
}
