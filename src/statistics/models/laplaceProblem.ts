import { multiply, type SparseRows, transposeMultiply } from "../linearAlgebra/sparseRows.ts";
import type { CrossedGroups } from "./crossedGroups.ts";
import { CrossedSystem, emptySums } from "./crossedSystem.ts";
import type { Objective } from "./minimise.ts";

/** A logistic model with intercepts by group, ready to be evaluated at (thetaFew, thetaMany, coefficients…). */
export interface LaplaceProblem {
  readonly evaluate: Objective;
  /** Standardised intercepts at the last evaluation; times theta they are in log odds. */
  readonly modes: { readonly few: Float64Array; readonly many: Float64Array };
  readonly system: CrossedSystem;
  readonly weights: Float64Array;
}

const mostSteps = 60;
/** Gain of a further step, against the log-likelihood, at which the intercepts are settled: errors then are of its root. */
const settledGain = 1e-22;

/**
 * −2·log-likelihood of a logistic model with normal intercepts by Laplace's approximation: the intercepts are put
 * at their most likely values by Newton steps (penalised iteratively reweighted least squares), and the curvature
 * there stands for the integral. The gradient is exact, including how those values and the curvature move with
 * the parameters. The first parameter is absent when there is one grouping.
 */
export function laplaceProblem(
  matrix: SparseRows,
  successes: Float64Array,
  trials: Float64Array,
  groups: CrossedGroups,
): LaplaceProblem {
  const { rows, few, many, fewCount, pairOfRow } = groups;
  const crossed = fewCount > 0;
  const offset = crossed ? 2 : 1;
  const system = new CrossedSystem(groups);
  const weightSums = emptySums(groups);
  const inverse = emptySums(groups);
  const u = emptySums(groups);
  const previous = emptySums(groups);
  const step = emptySums(groups);
  const residualSums = emptySums(groups);
  const fixedPart = new Float64Array(rows);
  const p = new Float64Array(rows);
  const weights = new Float64Array(rows);
  const rowGradient = new Float64Array(rows);

  return { evaluate, modes: u, system, weights };

  function evaluate(parameters: Float64Array) {
    const thetaFew = crossed ? parameters[0]! : 0;
    const thetaMany = parameters[offset - 1]!;
    multiply(matrix, parameters.subarray(offset), fixedPart);
    const penalised = findModes(thetaFew, thetaMany);
    if (!Number.isFinite(penalised)) {
      u.few.fill(0);
      u.many.fill(0);
      return { value: Number.POSITIVE_INFINITY, gradient: new Float64Array(parameters.length) };
    }
    return { value: -2 * penalised + system.logDeterminant(), gradient: gradient(thetaFew, thetaMany) };
  }

  /** Newton steps on the intercepts, halved while they do not climb; returns the penalised log-likelihood. */
  function findModes(thetaFew: number, thetaMany: number): number {
    let best = Number.NEGATIVE_INFINITY;
    let halvings = 0;
    for (let round = 0; round < mostSteps; round++) {
      const value = moments(thetaFew, thetaMany);
      if (!(value >= best - 1e-10 * (1 + Math.abs(best)))) {
        if (++halvings > 30) return Number.NaN;
        for (let s = 0; s < u.few.length; s++) u.few[s] = (u.few[s]! + previous.few[s]!) / 2;
        for (let w = 0; w < u.many.length; w++) u.many[w] = (u.many[w]! + previous.many[w]!) / 2;
        continue;
      }
      best = value;
      if (!system.factorise(thetaFew, thetaMany, weightSums)) return Number.NaN;
      for (let s = 0; s < u.few.length; s++) step.few[s] = thetaFew * residualSums.few[s]! - u.few[s]!;
      for (let w = 0; w < u.many.length; w++) step.many[w] = thetaMany * residualSums.many[w]! - u.many[w]!;
      previous.few.set(step.few);
      previous.many.set(step.many);
      system.solve(step.few, step.many);
      const gain = dot(previous.few, step.few) + dot(previous.many, step.many);
      if (gain <= settledGain * (1 + Math.abs(value))) return value;
      previous.few.set(u.few);
      previous.many.set(u.many);
      for (let s = 0; s < u.few.length; s++) u.few[s]! += step.few[s]!;
      for (let w = 0; w < u.many.length; w++) u.many[w]! += step.many[w]!;
    }
    return Number.NaN;
  }

  /** Chances, working weights and their sums at the present intercepts; returns the penalised log-likelihood. */
  function moments(thetaFew: number, thetaMany: number): number {
    weightSums.few.fill(0);
    weightSums.many.fill(0);
    weightSums.pair.fill(0);
    residualSums.few.fill(0);
    residualSums.many.fill(0);
    let logLikelihood = 0;
    for (let i = 0; i < rows; i++) {
      const w = many[i]!;
      const s = few[i]!;
      const eta = fixedPart[i]! + thetaMany * u.many[w]! + (crossed ? thetaFew * u.few[s]! : 0);
      const small = Math.exp(-Math.abs(eta));
      const share = 1 / (1 + small);
      const chance = eta > 0 ? share : small * share;
      const weight = trials[i]! * share * share * small;
      const residual = successes[i]! - trials[i]! * chance;
      logLikelihood += successes[i]! * eta - trials[i]! * (Math.max(eta, 0) - Math.log(share));
      p[i] = chance;
      weights[i] = weight;
      weightSums.many[w]! += weight;
      residualSums.many[w]! += residual;
      if (crossed) {
        weightSums.few[s]! += weight;
        weightSums.pair[pairOfRow[i]!]! += weight;
        residualSums.few[s]! += residual;
      }
    }
    return logLikelihood - (dot(u.few, u.few) + dot(u.many, u.many)) / 2;
  }

  function gradient(thetaFew: number, thetaMany: number): Float64Array {
    system.inverseEntries(inverse);
    step.few.fill(0);
    step.many.fill(0);
    let explicitFew = 0;
    let explicitMany = 0;
    for (let i = 0; i < rows; i++) {
      const own = inverse.many[many[i]!]!;
      const other = crossed ? inverse.few[few[i]!]! : 0;
      const between = crossed ? inverse.pair[pairOfRow[i]!]! : 0;
      const leverage =
        thetaFew * thetaFew * other + thetaMany * thetaMany * own + 2 * thetaFew * thetaMany * between;
      const skew = leverage * weights[i]! * (1 - 2 * p[i]!);
      rowGradient[i] = skew;
      step.many[many[i]!]! += thetaMany * skew;
      if (crossed) step.few[few[i]!]! += thetaFew * skew;
      explicitMany += 2 * weights[i]! * (thetaMany * own + thetaFew * between);
      explicitFew += 2 * weights[i]! * (thetaFew * other + thetaMany * between);
    }
    system.solve(step.few, step.many);
    let towardsMany = explicitMany + dot(step.many, residualSums.many);
    let towardsFew = explicitFew + dot(step.few, residualSums.few);
    for (let i = 0; i < rows; i++) {
      const shift = thetaMany * step.many[many[i]!]! + (crossed ? thetaFew * step.few[few[i]!]! : 0);
      const value = rowGradient[i]! - weights[i]! * shift - 2 * (successes[i]! - trials[i]! * p[i]!);
      rowGradient[i] = value;
      towardsMany += u.many[many[i]!]! * value;
      if (crossed) towardsFew += u.few[few[i]!]! * value;
    }
    const ofCoefficients = transposeMultiply(matrix, rowGradient);
    const all = new Float64Array(offset + ofCoefficients.length);
    if (crossed) all[0] = towardsFew;
    all[offset - 1] = towardsMany;
    all.set(ofCoefficients, offset);
    return all;
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
