/** Tokens of a two-sided contrast within strata; all arrays have one entry a token. */
export interface StratifiedTokens {
  readonly stratum: ArrayLike<number>;
  readonly cluster: ArrayLike<number>;
  /** 1 on the first side of the contrast, 0 on the other. */
  readonly side: ArrayLike<number>;
  readonly value: ArrayLike<number>;
}

export interface ClusteredContrast {
  /** Variance of the contrast by the spread of the clusters. */
  readonly variance: number;
  /** Satterthwaite's degrees of freedom under independent tokens of equal variance. */
  readonly df: number;
  /** Share of the variance of independent tokens that the clusters' residuals see, 0 to 1: few clusters on a side hide it. */
  readonly seen: number;
  readonly clusters: number;
}

/**
 * Variance of the difference of two sides, compared within strata (least squares with an intercept for each stratum),
 * when tokens of one cluster may depend on each other in any way; clusters may cross strata. Squared sums of residuals
 * are inflated for leverage and the whole is corrected for what the intercepts and the clusters themselves hide, as if
 * tokens were independent (after Bell R. M. & McCaffrey D. F. (2002) Survey Methodology 28:169–181). Strata need tokens on
 * both sides; others add nothing. Null without such a stratum or with fewer than two clusters.
 */
export function clusteredContrast(tokens: StratifiedTokens): ClusteredContrast | null {
  const { stratum, cluster, side, value } = tokens;
  const sums = strataSums(tokens);
  let weight = 0;
  let difference = 0;
  for (const { n, m, first, second } of sums.values()) {
    const w = n + m > 0 ? (n * m) / (n + m) : 0;
    weight += w;
    if (w > 0) difference += w * (first / n - second / m);
  }
  if (!(weight > 0)) return null;
  difference /= weight;

  const clusters = new Map<number, { score: number; squares: number; inStrata: Map<number, number> }>();
  for (let i = 0; i < value.length; i++) {
    const { n, m, first, second } = sums.get(stratum[i]!)!;
    if (n === 0 || m === 0) continue;
    const z = side[i]! - n / (n + m);
    const residual = value[i]! - (first + second) / (n + m) - difference * z;
    const own = clusters.get(cluster[i]!) ?? { score: 0, squares: 0, inStrata: new Map<number, number>() };
    clusters.set(cluster[i]!, own);
    own.score += (z * residual) / weight;
    own.squares += (z * z) / weight;
    own.inStrata.set(stratum[i]!, (own.inStrata.get(stratum[i]!) ?? 0) + z);
  }
  if (clusters.size < 2) return null;
  return corrected(clusters.values(), sums, weight);
}

/** Beyond as many strata their intercepts are left out of the degrees of freedom, where they hardly count. */
const mostStrata = 800;

interface Strata {
  n: number;
  m: number;
  first: number;
  second: number;
}

function strataSums({ stratum, side, value }: StratifiedTokens): Map<number, Strata> {
  const sums = new Map<number, Strata>();
  for (let i = 0; i < value.length; i++) {
    const own = sums.get(stratum[i]!) ?? { n: 0, m: 0, first: 0, second: 0 };
    sums.set(stratum[i]!, own);
    if (side[i] === 1) {
      own.n++;
      own.first += value[i]!;
    } else {
      own.m++;
      own.second += value[i]!;
    }
  }
  return sums;
}

/**
 * With c the covariance of the clusters' scores for independent tokens of variance 1 (times the weight), that is
 * diagonal(h) − BBᵀ with a column of B for each stratum and one for the contrast itself: Σ a·score² over its
 * expectation, and 2·mean²/variance of that sum.
 */
function corrected(
  clusters: Iterable<{ score: number; squares: number; inStrata: ReadonlyMap<number, number> }>,
  sums: ReadonlyMap<number, Strata>,
  weight: number,
): ClusteredContrast {
  let observed = 0;
  let expected = 0;
  let plain = 0;
  let squares = 0;
  let count = 0;
  const width = sums.size > mostStrata ? 1 : sums.size + 1;
  const placeOf = new Map([...sums.keys()].map((stratum, k) => [stratum, k + 1]));
  const products = new Float64Array(width * width);
  for (const { score, squares: h, inStrata } of clusters) {
    count++;
    const a = 1 / Math.max(1 - h, 1e-6);
    const columns: [number, number][] = [[0, h]];
    for (const [s, z] of inStrata) {
      const { n, m } = sums.get(s)!;
      if (z !== 0) columns.push([placeOf.get(s)!, z / Math.sqrt((n + m) * weight)]);
    }
    const hidden = columns.reduce((sum, [, b]) => sum + b * b, 0);
    observed += a * score * score;
    expected += a * (h - hidden);
    plain += h - hidden;
    squares += a * a * h * h - 2 * a * a * h * hidden;
    const crossed = width === 1 ? columns.slice(0, 1) : columns;
    for (const [s, b] of crossed) for (const [t, c] of crossed) products[s * width + t]! += a * b * c;
  }
  for (const product of products) squares += product * product;
  return {
    variance: expected > 0 ? observed / expected : 0,
    df: squares > 0 ? (expected * expected) / squares : 0,
    seen: plain,
    clusters: count,
  };
}
