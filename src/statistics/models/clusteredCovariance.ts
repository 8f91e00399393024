import { fewClusters, tooFewClusters } from "../../messages/models.ts";
import { multiplySquare, multiplyVector } from "../linearAlgebra/square.ts";
import { type ClusterScores, clusterScores } from "./clusterScores.ts";
import { leverageAdjustments } from "./leverageAdjustments.ts";
import { cannotBeEstimated, type Outcome } from "./outcome.ts";
import type { RegressionFit } from "./regressionFit.ts";
import { satterthwaiteDf } from "./satterthwaiteDf.ts";

/**
 * - `CR0`: no correction (Liang & Zeger 1986, Biometrika 73:13–22).
 * - `CR1`: times G/(G−1) for G clusters.
 * - `CR1S`: times G/(G−1) · (n−1)/(n−k) for n tokens and k coefficients.
 * - `CR2`: unbiased under independence, for few or unequal clusters; its degrees of freedom come with it.
 */
export type ClusterCorrection = "CR0" | "CR1" | "CR1S" | "CR2";

export interface ClusteredCovariance {
  readonly correction: ClusterCorrection;
  readonly clusters: number;
  /** coefficients × coefficients, row after row. */
  readonly covariance: Float64Array;
  /** Degrees of freedom for the t interval of a contrast: Satterthwaite's for CR2, else clusters − 1. */
  readonly degreesOfFreedom: (contrast: ArrayLike<number>) => number;
}

const plenty = 20;

/**
 * Covariance of the coefficients when tokens of one cluster may depend on each other in any way. `cluster` gives a
 * code for each row of the columns (speaker or word); `unit` names it in notices. Refuses fewer than 2 clusters.
 */
export function clusteredCovariance(
  fit: RegressionFit,
  cluster: ArrayLike<number>,
  correction: ClusterCorrection,
  unit = "speaker",
): Outcome<ClusteredCovariance> {
  const sums = clusterScores(fit, cluster, correction === "CR2");
  const { clusters } = sums;
  if (clusters < 2) return cannotBeEstimated(tooFewClusters(clusters, unit));
  const k = fit.coefficients.length;
  const adjustments = correction === "CR2" ? leverageAdjustments(sums.information, fit.bread, k) : null;
  const meat = new Float64Array(k * k);
  for (const [g, score] of sums.scores.entries()) {
    const adjusted = adjustments ? multiplyVector(adjustments[g]!, score) : score;
    for (let a = 0; a < k; a++) for (let b = 0; b < k; b++) meat[a * k + b]! += adjusted[a]! * adjusted[b]!;
  }
  const factor = scaleOf(correction, sums, fit);
  const covariance = multiplySquare(multiplySquare(fit.bread, meat, k), fit.bread, k).map(
    (value) => value * factor,
  );
  const degreesOfFreedom = adjustments
    ? (contrast: ArrayLike<number>) => satterthwaiteDf(contrast, fit.bread, sums.information, adjustments)
    : () => clusters - 1;
  const notices = clusters < plenty && correction !== "CR2" ? [fewClusters(clusters, unit)] : [];
  return { status: "ok", fit: { correction, clusters, covariance, degreesOfFreedom }, notices };
}

function scaleOf(correction: ClusterCorrection, { clusters }: ClusterScores, fit: RegressionFit): number {
  if (correction === "CR0" || correction === "CR2") return 1;
  const ofClusters = clusters / (clusters - 1);
  return correction === "CR1"
    ? ofClusters
    : (ofClusters * (fit.tokens - 1)) / (fit.tokens - fit.coefficients.length);
}
