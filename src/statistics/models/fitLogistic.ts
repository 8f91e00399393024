import {
  allTheSameOutcome,
  didNotConverge,
  firthUsed,
  separation as separationText,
  tooFewTokens,
} from "../../messages/models.ts";
import { countsOfRows } from "./countsOfRows.ts";
import type { Design } from "./designMatrix.ts";
import { logisticNewton, type NewtonResult } from "./logisticNewton.ts";
import { cannotBeEstimated, type Outcome } from "./outcome.ts";
import type { RegressionFit } from "./regressionFit.ts";
import { separatedCombinations, separatedLevels } from "./separatedLevels.ts";

export interface LogisticFit extends RegressionFit {
  readonly method: "maximum likelihood" | "Firth";
  /** Log-likelihood of the single tokens; cells and tokens give the same. */
  readonly logLikelihood: number;
  readonly iterations: number;
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

/** Log odds beyond which a row is looked at for separation: chances under 1 in 20,000. */
const suspiciousLogOdds = 10;

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
  const counts = countsOfRows(design, successes, trials);
  if ("reason" in counts) return cannotBeEstimated(counts.reason, design.notices);
  const tokens = sum(counts.trials);
  const marked = sum(counts.successes);
  if (tokens <= design.coefficients.length)
    return cannotBeEstimated(tooFewTokens(tokens, design.coefficients.length), design.notices);
  if (marked === 0 || marked === tokens)
    return cannotBeEstimated(allTheSameOutcome(marked, tokens), design.notices);

  const wantsFirth = options.method === "Firth";
  const levels = separatedLevels(design, counts.successes, counts.trials);
  let newton =
    levels.length > 0 ? null : logisticNewton(design.matrix, counts.successes, counts.trials, wantsFirth);
  const separated =
    newton && !wantsFirth ? combinations(design, counts.successes, counts.trials, newton) : levels;
  const notices = [...design.notices];
  if (separated.length > 0 && !wantsFirth) {
    if (options.onSeparation !== "firth") return cannotBeEstimated(separationText(separated), notices);
    notices.push(firthUsed(separated));
    newton = null;
  }
  const firth = wantsFirth || separated.length > 0;
  newton ??= logisticNewton(design.matrix, counts.successes, counts.trials, firth);
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
    tokens,
    logLikelihood: newton.logLikelihood,
    iterations: newton.iterations,
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

function combinations(
  design: Design,
  successes: Float64Array,
  trials: Float64Array,
  newton: NewtonResult,
): string[] {
  const suspicious = newton.eta.some((eta) => Math.abs(eta) > suspiciousLogOdds);
  if (!suspicious && newton.converged) return [];
  return separatedCombinations(
    design,
    successes,
    trials,
    (row) => Math.abs(newton.eta[row]!) < suspiciousLogOdds,
  );
}

const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
