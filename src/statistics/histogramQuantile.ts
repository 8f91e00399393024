/**
 * Quantile of tokens counted by value: `counts[v]` tokens (or weights) lie at value v = index.
 * With whole counts `p` = 0.5 gives the ordinary median (mean of the two middle values for an even count).
 * NaN for an empty histogram.
 */
export function histogramQuantile(counts: ArrayLike<number>, p: number): number {
  let total = 0;
  for (let v = 0; v < counts.length; v++) total += counts[v]!;
  if (!(total > 0)) return Number.NaN;
  const target = p * total;
  const slack = total * 1e-12;
  let below = 0;
  for (let v = 0; v < counts.length; v++) {
    below += counts[v]!;
    if (below > target + slack) return v;
    if (below >= target - slack && counts[v]! > 0) {
      for (let next = v + 1; next < counts.length; next++) if (counts[next]! > 0) return (v + next) / 2;
      return v;
    }
  }
  return Number.NaN;
}
