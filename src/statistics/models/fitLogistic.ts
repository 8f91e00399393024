import { didNotConverge, firthUsed, separation as separationText } from "../../messages/models.ts";
import { checkLogistic } from "./checkLogistic.ts";
import type { Design } from "./designMatrix.ts";
import { firthLogistic } from "./firthLogistic.ts";
import type { NewtonResult } from "./logisticNewton.ts";
import { logisticOrSeparated } from "./logisticOrSeparated.ts";
import { cannotBeEstimated, type Outcome } from "./outcome.ts";
import type { RegressionFit } from "./regressionFit.ts";

export interface LogisticFit extends RegressionFit {
  readonly method: "maximum likelihood" | "Firth";
  /** Log-likelihood of the single tokens; cells and tokens give the same. */
  readonly logLikelihood: number;
  readonly iterations: number;
  /**
   * Places of the coefficients whose maximum-likelihood estimate is infinite (Firth's is finite, but errors from scores
   * are far too small for them); empty without separation.
   */
  readonly separated: readonly number[];
}

export interface LogisticOptions {
  /**
   * What to do when the terms predict some tokens without exception, so that an odds ratio would be infinite.
   * Default "stop": say which level. "firth": fit by Firth's correction and say so.
   */
  readonly onSeparation?: "stop" | "firth";
  /** Default "maximum likelihood". "Firth" also lessens the bias of small samples. */
  readonly method?: LogisticFit["method"];
}

/**
 * Logistic regression of `successes` of `trials` (arrays over the columns' rows; `design.rows` picks from them).
 * Rows may be single tokens or cells: estimates, errors and likelihood are the same.
 */
export function fitLogistic(
  design: Design,
  successes: ArrayLike<number>,
  trials: ArrayLike<number>,
  options: LogisticOptions = {},
): Outcome<LogisticFit> {
  const counts = checkLogistic(design, successes, trials);
  if ("reason" in counts) return cannotBeEstimated(counts.reason, design.notices);
  const notices = [...design.notices];
  let newton: NewtonResult | null = null;
  let infinite: readonly number[] = [];
  if (options.method !== "Firth") {
    const found = logisticOrSeparated(design, counts);
    if ("newton" in found) newton = found.newton;
    else if (options.onSeparation === "firth") {
      notices.push(firthUsed(found.separated.texts));
      infinite = found.separated.coefficients;
    } else return cannotBeEstimated(separationText(found.separated.texts), notices);
  }
  const firth = newton === null;
  newton ??= firthLogistic(design.matrix, counts.successes, counts.trials);
  if (!newton.bread || !newton.coefficients.every(Number.isFinite))
    return cannotBeEstimated(didNotConverge("The logistic model", newton.iterations), notices);
  const fit: LogisticFit = {
    design,
    method: firth ? "Firth" : "maximum likelihood",
    coefficients: newton.coefficients,
    covariance: newton.bread,
    bread: newton.bread,
    workingWeights: newton.weights,
    scoreResiduals: newton.residuals,
    counts: counts.trials,
    tokens: counts.tokens,
    logLikelihood: newton.logLikelihood,
    iterations: newton.iterations,
    separated: infinite,
  };
  return newton.converged
    ? { status: "ok", fit, notices }
    : {
        status: "not converged",
        fit,
        reason: didNotConverge("The logistic model", newton.iterations),
        notices,
      };
}
