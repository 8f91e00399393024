/**
 * p-values adjusted so that rejecting those ≤ q keeps the expected share of false rejections at most q
 * over the whole family. Same order as given; missing values (NaN) stay NaN and do not count.
 * Source: Benjamini Y. & Hochberg Y. (1995) JRSS-B 57:289–300.
 */
export function benjaminiHochberg(pValues: readonly number[]): number[] {
  const order = pValues.map((_, i) => i).filter((i) => !Number.isNaN(pValues[i]));
  order.sort((a, b) => pValues[b]! - pValues[a]!);
  const adjusted = pValues.map(() => Number.NaN);
  let least = 1;
  for (const [fromTop, i] of order.entries()) {
    const rank = order.length - fromTop;
    least = Math.min(least, (pValues[i]! * order.length) / rank);
    adjusted[i] = least;
  }
  return adjusted;
}
