/** Count, mean and standard deviation (n − 1) of values; NaN mean for none, NaN sd for fewer than two. */
export interface Summary {
  readonly n: number;
  readonly mean: number;
  readonly sd: number;
}

/**
 * Sum with Neumaier's compensation: the rounding error of each addition is kept and added at the end.
 * Source: Neumaier A. (1974) ZAMM 54:39–51.
 */
export function compensatedSum(values: ArrayLike<number>): number {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}

/**
 * Mean and standard deviation in two passes, the second corrected for the rounding of the mean.
 * Source: Chan T. F., Golub G. H. & LeVeque R. J. (1983) Am. Stat. 37:242–247, corrected two-pass algorithm.
 */
export function summarise(values: ArrayLike<number>): Summary {
  const n = values.length;
  const mean = compensatedSum(values) / n;
  let squares = 0;
  let rest = 0;
  for (let i = 0; i < n; i++) {
    const residual = values[i]! - mean;
    squares += residual * residual;
    rest += residual;
  }
  const variance = n < 2 ? Number.NaN : Math.max(0, (squares - (rest * rest) / n) / (n - 1));
  return { n, mean, sd: Math.sqrt(variance) };
}

/** Variance (n − 1) from n, Σx and Σx²: never below 0; NaN for fewer than two. Accurate while sd is not tiny against the mean. */
export function varianceFromSums(n: number, sum: number, sumSquares: number): number {
  return n < 2 ? Number.NaN : Math.max(0, (sumSquares - (sum * sum) / n) / (n - 1));
}
