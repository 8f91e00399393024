import { didNotConverge, perfectFit } from "../../messages/models.ts";
import { checkGroups, type Intercepts } from "./checkGroups.ts";
import { containmentDf } from "./containmentDf.ts";
import type { Design } from "./designMatrix.ts";
import { groupVariances } from "./groupVariances.ts";
import { type LinearProfile, linearProfile } from "./linearProfile.ts";
import { minimiseWithScales } from "./minimiseWithScales.ts";
import type { MixedFit } from "./mixedFit.ts";
import { cannotBeEstimated, type Outcome } from "./outcome.ts";
import { type ResponseOptions, responseOfRows } from "./responseOfRows.ts";
import { settle } from "./settle.ts";

export interface MixedLinearOptions extends ResponseOptions {
  /**
   * Default "ML". "REML" corrects variances for the coefficients that were estimated; its likelihoods cannot be
   * compared between models with different terms.
   */
  readonly method?: "ML" | "REML";
}

/** Residual variation below this part of the whole is none: the groups and terms say everything. */
const perfect = 1e-6;

/** Where the search for the intercepts' standard deviations starts, in residual ones. */
const startScale = 0.5;

/**
 * Linear model of `response` (log duration, one value a row of the columns) with normal random intercepts for one
 * or two crossed groupings. With tokens and sums of squares within, rows may be cells: the result is that of the
 * tokens. Errors hold the variances as known, which makes them somewhat small with few groups.
 */
export function fitMixedLinear(
  design: Design,
  response: ArrayLike<number>,
  intercepts: Intercepts,
  options: MixedLinearOptions = {},
): Outcome<MixedFit> {
  const found = responseOfRows(design, response, options);
  if ("reason" in found) return cannotBeEstimated(found.reason, design.notices);
  const groups = checkGroups(design, intercepts, found.counts);
  if ("reason" in groups) return cannotBeEstimated(groups.reason, design.notices);
  const notices = [...design.notices, ...groups.notices];

  const centre =
    design.coefficients[0]?.parts.length === 0 ? mean(found.values, found.counts, found.tokens) : 0;
  const centred = found.values.map((value) => value - centre);
  const inside = found.within.reduce((sum, value) => sum + value, 0);
  const method = options.method ?? "ML";
  const profile = linearProfile(
    design.matrix,
    centred,
    found.counts,
    inside,
    groups.crossed,
    method === "REML",
  );
  const sizes = groups.few ? [groups.crossed.fewCount, groups.crossed.manyCount] : [groups.crossed.manyCount];
  const start = new Float64Array(sizes.length).fill(startScale);
  const curvature = new Float64Array(sizes.length ** 2);
  for (const [j, size] of sizes.entries()) curvature[j * sizes.length + j] = startScale ** 2 / (4 * size);
  const evaluate = (scales: Float64Array) => objective(profile(scales), sizes.length);
  const minimum = minimiseWithScales(evaluate, start, curvature, sizes.length);
  const home = settle(evaluate, minimum, sizes.length);
  const x = home?.x ?? minimum.x;
  const at = profile(x);
  const spread = centred.reduce((sum, value, i) => sum + found.counts[i]! * value * value, inside);
  if (!at || at.residualVariance * found.tokens <= perfect * spread)
    return cannotBeEstimated(perfectFit(), notices);

  const coefficients = Float64Array.from(at.coefficients);
  if (centre !== 0) coefficients[0]! += centre;
  const sd = Math.sqrt(at.residualVariance);
  const variances = groupVariances(
    groups,
    Object.keys(intercepts),
    {
      few: { sd: groups.few ? x[0]! * sd : 0, modes: at.modes.few },
      many: { sd: x[sizes.length - 1]! * sd, modes: at.modes.many },
    },
    at.residualVariance,
  );
  notices.push(...variances.notices);
  const fit: MixedFit = {
    design,
    method: method === "ML" ? "maximum likelihood" : "restricted maximum likelihood",
    coefficients,
    covariance: at.inverseInformation.map((value) => value * at.residualVariance),
    degreesOfFreedom: containmentDf(design.matrix, groups.all, found.tokens),
    groupings: variances.groupings,
    residualVariance: at.residualVariance,
    residualShare: variances.residualShare,
    logLikelihood: -at.deviance / 2,
    tokens: found.tokens,
    counts: found.counts,
    iterations: minimum.iterations,
  };
  return home?.settled
    ? { status: "ok", fit, notices }
    : {
        status: "not converged",
        fit,
        reason: didNotConverge("The mixed linear model", minimum.iterations),
        notices,
      };
}

function objective(found: LinearProfile | null, size: number) {
  return found
    ? { value: found.deviance, gradient: found.gradient }
    : { value: Number.POSITIVE_INFINITY, gradient: new Float64Array(size) };
}

function mean(values: Float64Array, counts: Float64Array, tokens: number): number {
  return values.reduce((sum, value, i) => sum + value * counts[i]!, 0) / tokens;
}
