/**
 * Normalised pairwise variability index: mean of |a − b| / ((a + b) / 2) over neighbours, × 100. 0 for equal durations;
 * does not change with speech rate. NaN for fewer than two. Source: Grabe E. & Low E. L. (2002) Laboratory Phonology
 * 7:515–546; formula checks nPVI[1, 3] = 100, nPVI[100, 200, 100, 200] = 66.7.
 */
export function normalisedPvi(durations: readonly number[]): number {
  return 100 * meanOverNeighbours(durations, (a, b) => (a + b > 0 ? Math.abs(a - b) / ((a + b) / 2) : 0));
}

/** Raw pairwise variability index: mean of |a − b| over neighbours, in the unit of the durations. NaN for fewer than two. */
export function rawPvi(durations: readonly number[]): number {
  return meanOverNeighbours(durations, (a, b) => Math.abs(a - b));
}

function meanOverNeighbours(
  durations: readonly number[],
  distance: (a: number, b: number) => number,
): number {
  let sum = 0;
  for (let i = 1; i < durations.length; i++) sum += distance(durations[i - 1]!, durations[i]!);
  return sum / (durations.length - 1 || Number.NaN);
}
