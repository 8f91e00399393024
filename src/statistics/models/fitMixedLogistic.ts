import { didNotConverge, separationInMixedModel, variationUnbounded } from "../../messages/models.ts";
import { invertPositiveDefinite } from "../linearAlgebra/invertPositiveDefinite.ts";
import type { SparseRows } from "../linearAlgebra/sparseRows.ts";
import { checkGroups, type Intercepts } from "./checkGroups.ts";
import { checkLogistic } from "./checkLogistic.ts";
import { containmentDf } from "./containmentDf.ts";
import { type CrossedGroups, rowsByGroup } from "./crossedGroups.ts";
import type { Design } from "./designMatrix.ts";
import { fixedInformation } from "./fixedInformation.ts";
import { groupVariances } from "./groupVariances.ts";
import { type LaplaceProblem, laplaceProblem } from "./laplaceProblem.ts";
import { logisticOrSeparated } from "./logisticOrSeparated.ts";
import { minimiseWithScales } from "./minimiseWithScales.ts";
import type { MixedFit } from "./mixedFit.ts";
import { cannotBeEstimated, type Outcome } from "./outcome.ts";
import { quadratureProblem } from "./quadratureProblem.ts";
import { settle } from "./settle.ts";

export interface MixedLogisticOptions {
  /**
   * Points of adaptive Gauss–Hermite quadrature. Default 1: Laplace's approximation. More (10 is plenty) are
   * possible with one grouping and matter when groups are small or outcomes rare.
   */
  readonly quadraturePoints?: number;
}

/** Beyond this spread in log odds nearly every group is all or nothing, and the likelihood has no top. */
const unboundedSd = 15;

/** Where the search for a standard deviation of intercepts starts, in log odds. */
const startSd = 0.6;

/**
 * Logistic regression with normal random intercepts for one or two crossed groupings, by maximum likelihood.
 * Counts are arrays over the rows of the columns, as for `fitLogistic`; rows may be tokens or cells. Coefficients
 * speak of one speaker and word ("conditional"); errors come from the curvature of the likelihood, variances included.
 */
export function fitMixedLogistic(
  design: Design,
  successes: ArrayLike<number>,
  trials: ArrayLike<number>,
  intercepts: Intercepts,
  options: MixedLogisticOptions = {},
): Outcome<MixedFit> {
  const points = options.quadraturePoints ?? 1;
  const counts = checkLogistic(design, successes, trials);
  if ("reason" in counts) return cannotBeEstimated(counts.reason, design.notices);
  const groups = checkGroups(design, intercepts, counts.trials);
  if ("reason" in groups) return cannotBeEstimated(groups.reason, design.notices);
  if (points > 1 && groups.few) throw new Error("quadrature needs a single grouping; use 1 point for two");
  const simple = logisticOrSeparated(design, counts);
  if ("separated" in simple)
    return cannotBeEstimated(separationInMixedModel(simple.separated.texts), design.notices);

  const { matrix } = design;
  const laplace = laplaceProblem(matrix, counts.successes, counts.trials, groups.crossed);
  const offset = groups.few ? 2 : 1;
  const start = new Float64Array(offset + matrix.columns).fill(startSd, 0, offset);
  start.set(simple.newton.coefficients, offset);
  const quadrature =
    points > 1
      ? quadratureProblem(matrix, counts.successes, counts.trials, rowsByGroup(groups.many), points)
      : null;
  const { evaluate } = quadrature ?? laplace;
  const notices = [...design.notices, ...groups.notices];
  const curvature = startCurvature(laplace, start, groups.crossed, matrix);
  if (!curvature) return cannotBeEstimated(didNotConverge("The mixed logistic model", 0), notices);
  const minimum = minimiseWithScales(evaluate, start, curvature, offset, 1e-7);
  const home = settle(evaluate, minimum, offset);
  const x = home?.x ?? minimum.x;
  const at = evaluate(x);
  const modes = quadrature ? { few: new Float64Array(0), many: quadrature.modes } : laplace.modes;
  const sdFew = groups.few ? x[0]! : 0;
  const sdMany = x[offset - 1]!;
  const residualVariance = Math.PI ** 2 / 3;
  const variances = groupVariances(
    groups,
    Object.keys(intercepts),
    {
      few: { sd: sdFew, modes: modes.few.map((u) => u * sdFew) },
      many: { sd: sdMany, modes: modes.many.map((u) => u * sdMany) },
    },
    residualVariance,
  );
  notices.push(...variances.notices);
  if (!home || !x.every(Number.isFinite))
    return cannotBeEstimated(didNotConverge("The mixed logistic model", minimum.iterations), notices);
  const fit: MixedFit = {
    design,
    method: points > 1 ? `adaptive quadrature with ${points} points` : "Laplace approximation",
    coefficients: x.slice(offset),
    covariance: covarianceOf(home.inverse, offset),
    degreesOfFreedom: containmentDf(matrix, groups.all, counts.tokens),
    groupings: variances.groupings,
    residualVariance,
    residualShare: variances.residualShare,
    logLikelihood: -at.value / 2,
    tokens: counts.tokens,
    counts: counts.trials,
    iterations: minimum.iterations,
  };
  const runaway = variances.groupings.find((grouping) => grouping.standardDeviation > unboundedSd);
  if (runaway) return { status: "not converged", fit, reason: variationUnbounded(runaway.unit), notices };
  return home.settled
    ? { status: "ok", fit, notices }
    : {
        status: "not converged",
        fit,
        reason: didNotConverge("The mixed logistic model", minimum.iterations),
        notices,
      };
}

/** Covariance of the coefficients, from the inverse second derivatives of −2·log-likelihood in all parameters. */
function covarianceOf(inverse: Float64Array, offset: number): Float64Array {
  const n = Math.sqrt(inverse.length);
  const k = n - offset;
  return Float64Array.from(
    { length: k * k },
    (_, at) => 2 * inverse[(Math.floor(at / k) + offset) * n + (at % k) + offset]!,
  );
}

/** A first inverse Hessian: what intercepts leave of the information, and the rough certainty of a spread of groups. */
function startCurvature(
  { evaluate, system, weights }: LaplaceProblem,
  start: Float64Array,
  groups: CrossedGroups,
  matrix: SparseRows,
): Float64Array | null {
  if (!Number.isFinite(evaluate(start).value)) return null;
  const n = start.length;
  const offset = n - matrix.columns;
  const thetaFew = offset === 2 ? startSd : 0;
  const information = fixedInformation(matrix, weights, groups, system, thetaFew, startSd);
  const inverse = invertPositiveDefinite(information, matrix.columns);
  if (!inverse) return null;
  const curvature = new Float64Array(n * n);
  for (let a = 0; a < matrix.columns; a++)
    for (let b = 0; b < matrix.columns; b++)
      curvature[(a + offset) * n + b + offset] = inverse[a * matrix.columns + b]! / 2;
  const sizes = offset === 2 ? [groups.fewCount, groups.manyCount] : [groups.manyCount];
  for (const [j, size] of sizes.entries()) curvature[j * n + j] = startSd ** 2 / (4 * size);
  return curvature;
}
