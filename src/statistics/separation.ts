/** How well a measure tells two groups apart, whatever the cut. */
export interface BestCut {
  /** Values from here on are called "high". */
  readonly cut: number;
  /** Share of the high group at or above the cut. */
  readonly highCorrect: number;
  /** Share of the low group below it. */
  readonly lowCorrect: number;
  /** Mean of the two: 0.5 is chance, 1 perfect. */
  readonly balancedAccuracy: number;
}

/**
 * Chance that a value of the high group exceeds one of the low group, ties counted half: the area under the receiver
 * operating curve. Arguments count tokens by value (index). NaN when a group is empty.
 * Source: Mann H. B. & Whitney D. R. (1947) Ann. Math. Stat. 18:50–60; Bamber D. (1975) J. Math. Psychol. 12:387–415.
 */
export function areaUnderCurve(high: ArrayLike<number>, low: ArrayLike<number>): number {
  let below = 0;
  let lowTotal = 0;
  let highTotal = 0;
  let wins = 0;
  for (let v = 0; v < low.length; v++) lowTotal += low[v]!;
  for (let v = 0; v < high.length; v++) {
    const ties = v < low.length ? low[v]! : 0;
    wins += high[v]! * (below + ties / 2);
    below += ties;
    highTotal += high[v]!;
  }
  return highTotal > 0 && lowTotal > 0 ? wins / (highTotal * lowTotal) : Number.NaN;
}

/**
 * Variance of `areaUnderCurve` for independent tokens; 0 for groups quite apart, NaN for fewer than two tokens in one.
 * Source: DeLong E. R., DeLong D. M. & Clarke-Pearson D. L. (1988) Biometrics 44:837–845.
 */
export function areaVariance(high: ArrayLike<number>, low: ArrayLike<number>): number {
  const area = areaUnderCurve(high, low);
  // Placement of each high value among the low ones, and of each low one among the high ones.
  return placementVariance(high, low, area) + placementVariance(low, high, 1 - area);
}

function placementVariance(of: ArrayLike<number>, among: ArrayLike<number>, mean: number): number {
  let total = 0;
  for (let v = 0; v < among.length; v++) total += among[v]!;
  let below = 0;
  let n = 0;
  let squares = 0;
  for (let v = 0; v < of.length; v++) {
    const ties = v < among.length ? among[v]! : 0;
    squares += of[v]! * ((below + ties / 2) / total - mean) ** 2;
    n += of[v]!;
    below += ties;
  }
  return squares / (n - 1) / n;
}

/**
 * The cut that keeps the two groups apart best, each group counting the same however large (Youden W. J. (1950)
 * Cancer 3:32–35). Between two occupied values the cut lies half way; null when a group is empty.
 */
export function bestCut(high: ArrayLike<number>, low: ArrayLike<number>): BestCut | null {
  const length = Math.max(high.length, low.length);
  const at = (counts: ArrayLike<number>, v: number) => (v < counts.length ? counts[v]! : 0);
  let highTotal = 0;
  let lowTotal = 0;
  for (let v = 0; v < length; v++) {
    highTotal += at(high, v);
    lowTotal += at(low, v);
  }
  if (!(highTotal > 0 && lowTotal > 0)) return null;
  let best: BestCut | null = null;
  let highBelow = 0;
  let lowBelow = 0;
  let last = 0;
  for (let v = 0; v < length; v++) {
    if (at(high, v) + at(low, v) === 0) continue;
    const highCorrect = 1 - highBelow / highTotal;
    const lowCorrect = lowBelow / lowTotal;
    const balancedAccuracy = (highCorrect + lowCorrect) / 2;
    if (best === null || balancedAccuracy > best.balancedAccuracy)
      best = {
        cut: lowBelow + highBelow === 0 ? v : (last + v) / 2,
        highCorrect,
        lowCorrect,
        balancedAccuracy,
      };
    highBelow += at(high, v);
    lowBelow += at(low, v);
    last = v;
  }
  return best;
}
