import { twoWayClipped } from "../../messages/models.ts";
import { multiplySquare, transposeSquare } from "../linearAlgebra/square.ts";
import { symmetricEigen } from "../linearAlgebra/symmetricEigen.ts";
import { type ClusteredCovariance, clusteredCovariance } from "./clusteredCovariance.ts";
import type { Outcome } from "./outcome.ts";
import type { RegressionFit } from "./regressionFit.ts";

/** Two clusterings of the rows of the columns, as codes, such as speaker and word, with their names for notices. */
export interface TwoClusterings {
  readonly first: ArrayLike<number>;
  readonly second: ArrayLike<number>;
  /** Default `["speaker", "word"]`. */
  readonly units?: readonly [string, string];
  /** Correction of each of the two parts. Default "CR2", for few speakers; "CR1" is the usual textbook form. */
  readonly correction?: "CR1" | "CR2";
}

/**
 * Covariance of the coefficients when tokens of one speaker, and tokens of one word, may depend on each other:
 * clustered by one plus by the other less by both at once (Cameron, Gelbach & Miller 2011, JBES 29:238–249), each
 * with its own correction (CR1 for both at once); negative directions are set to 0, with a notice. Errors clustered
 * by speaker alone miss what traits of words owe to the choice of words. Degrees of freedom: the fewer of the two.
 */
export function twoWayCovariance(
  fit: RegressionFit,
  clusterings: TwoClusterings,
): Outcome<ClusteredCovariance> {
  const { first, second, units = ["speaker", "word"], correction = "CR2" } = clusterings;
  const byFirst = clusteredCovariance(fit, first, correction, units[0]);
  if (byFirst.status !== "ok") return byFirst;
  const bySecond = clusteredCovariance(fit, second, correction, units[1]);
  if (bySecond.status !== "ok") return bySecond;
  const byBoth = clusteredCovariance(fit, pairCodes(first, second), "CR1");
  if (byBoth.status !== "ok") return byBoth;
  const k = fit.coefficients.length;
  const sum = byFirst.fit.covariance.map(
    (value, at) => value + bySecond.fit.covariance[at]! - byBoth.fit.covariance[at]!,
  );
  const clusters = Math.min(byFirst.fit.clusters, bySecond.fit.clusters);
  const covariance = withoutNegative(sum, k);
  const clipped = covariance === sum ? [] : [twoWayClipped(units[0], units[1])];
  const degreesOfFreedom = (contrast: ArrayLike<number>) =>
    Math.min(byFirst.fit.degreesOfFreedom(contrast), bySecond.fit.degreesOfFreedom(contrast));
  return {
    status: "ok",
    fit: { correction, clusters, covariance, degreesOfFreedom },
    notices: [...byFirst.notices, ...bySecond.notices, ...clipped],
  };
}

function pairCodes(first: ArrayLike<number>, second: ArrayLike<number>): Float64Array {
  let largest = 0;
  for (let i = 0; i < second.length; i++) largest = Math.max(largest, second[i]!);
  return Float64Array.from({ length: first.length }, (_, i) => first[i]! * (largest + 1) + second[i]!);
}

/** The nearest matrix without negative eigenvalues; the same matrix when it has none. */
function withoutNegative(matrix: Float64Array, k: number): Float64Array {
  const { values, vectors } = symmetricEigen(matrix, k);
  if (values.every((value) => value >= 0)) return matrix;
  const scaled = vectors.map((value, at) => value * Math.max(0, values[at % k]!));
  return multiplySquare(scaled, transposeSquare(vectors, k), k);
}
