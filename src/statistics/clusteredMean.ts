/** One cluster (a speaker): its value, the weight it has in the mean, and the sampling variance of its value. */
export interface ClusterValues {
  readonly values: ArrayLike<number>;
  /** > 0; a speaker's tokens, so that every token counts the same, or 1, so that every speaker does. */
  readonly weights: ArrayLike<number>;
  /** Variance of each value within its cluster, as if its tokens were independent. */
  readonly within: ArrayLike<number>;
}

export interface ClusteredMean {
  readonly estimate: number;
  /** Variance of the estimate by the spread of the clusters. */
  readonly variance: number;
  /** Degrees of freedom of that variance: K − 1 for clusters of equal weight, fewer when a few clusters dominate. */
  readonly df: number;
  /** Variance of the estimate if tokens were independent: nothing may be more certain than this. */
  readonly tokenVariance: number;
  /** Skewness of the estimate by the spread of the clusters: Σ(h·r)³ / (Σ(h·r)²)^1.5 of shares h and residuals r; 0 without spread. */
  readonly skewness: number;
  /** Variance between clusters beyond what `within` explains (method of moments, never below 0). */
  readonly between: number;
  readonly clusters: number;
}

/**
 * Weighted mean over clusters with a variance that holds whatever the correlation inside a cluster.
 * Squared residuals are inflated for leverage and the sum is corrected and given degrees of freedom under the
 * working model "variance between clusters + variance within", estimated from the same clusters.
 * Needs at least two clusters. Source: Bell R. M. & McCaffrey D. F. (2002) Survey Methodology 28:169–181;
 * Pustejovsky J. E. & Tipton E. (2018) J. Bus. Econ. Stat. 36:672–683 (CR2 with Satterthwaite degrees of freedom).
 */
export function clusteredMean({ values, weights, within }: ClusterValues): ClusteredMean {
  const clusters = values.length;
  let total = 0;
  for (let k = 0; k < clusters; k++) total += weights[k]!;
  const share = new Float64Array(clusters);
  for (let k = 0; k < clusters; k++) share[k] = weights[k]! / total;
  let estimate = 0;
  for (let k = 0; k < clusters; k++) estimate += share[k]! * values[k]!;

  const between = momentBetween(values, share, within, estimate);
  let tokenVariance = 0;
  let shareSquares = 0;
  for (let k = 0; k < clusters; k++) {
    tokenVariance += share[k]! ** 2 * within[k]!;
    shareSquares += share[k]! ** 2;
  }
  const modelVariance = between * shareSquares + tokenVariance;
  const { observed, expected, df } = inflatedSquares(values, share, within, between, estimate, modelVariance);
  const variance = expected > 0 ? (observed * modelVariance) / expected : observed;
  const skewness = skewnessOf(values, share, estimate);
  return { estimate, variance, df, tokenVariance, skewness, between, clusters };
}

function skewnessOf(values: ArrayLike<number>, share: Float64Array, estimate: number): number {
  let squares = 0;
  let cubes = 0;
  for (let k = 0; k < values.length; k++) {
    const part = share[k]! * (values[k]! - estimate);
    squares += part * part;
    cubes += part * part * part;
  }
  return squares > 0 ? cubes / squares ** 1.5 : 0;
}

/** Σ a r² with a = h²/(1 − h), its expectation and degrees of freedom when value k has variance between + within[k]. */
function inflatedSquares(
  values: ArrayLike<number>,
  share: Float64Array,
  within: ArrayLike<number>,
  between: number,
  estimate: number,
  modelVariance: number,
): { observed: number; expected: number; df: number } {
  const clusters = values.length;
  let observed = 0;
  let expected = 0;
  let a0 = 0;
  let a1 = 0;
  let a2 = 0;
  let diagonal = 0;
  for (let k = 0; k < clusters; k++) {
    const h = share[k]!;
    const a = (h * h) / (1 - h);
    const v = between + within[k]!;
    const g = h * v;
    observed += a * (values[k]! - estimate) ** 2;
    expected += a * (v - 2 * g + modelVariance);
    a0 += a;
    a1 += a * g;
    a2 += a * g * g;
    diagonal += a * a * (2 * v * (modelVariance - 2 * g) + v * v);
  }
  // Residuals k and l have covariance s − g_k − g_l (+ v_k when k = l); the sum of its squares, multiplied out.
  const squares =
    (modelVariance * a0) ** 2 + 2 * a0 * a2 - 4 * modelVariance * a0 * a1 + 2 * a1 * a1 + diagonal;
  return { observed, expected, df: squares > 0 ? expected ** 2 / squares : clusters - 1 };
}

/** Between-cluster variance that makes Σ h r² equal its expectation. */
function momentBetween(
  values: ArrayLike<number>,
  share: Float64Array,
  within: ArrayLike<number>,
  estimate: number,
): number {
  let observed = 0;
  let fromWithin = 0;
  let shareSquares = 0;
  for (let k = 0; k < values.length; k++) {
    const h = share[k]!;
    observed += h * (values[k]! - estimate) ** 2;
    fromWithin += h * (1 - h) * within[k]!;
    shareSquares += h * h;
  }
  return shareSquares < 1 ? Math.max(0, (observed - fromWithin) / (1 - shareSquares)) : 0;
}
