/** Moments of a power spectrum taken as a distribution over frequency. */
export interface SpectralMoments {
  /** Centre of gravity, Hz. */
  readonly centreHz: number;
  /** Standard deviation, Hz. */
  readonly spreadHz: number;
  /** Third standardised moment; 0 for a symmetric spectrum, positive when energy piles up at the low end. */
  readonly skewness: number;
  /** Frequency of the highest point of the spectrum smoothed over 250 Hz, Hz. */
  readonly peakHz: number;
}

/** Width of the moving mean before the peak is read; one noise spectrum's single bins are chance. */
const smoothHz = 250;

/**
 * Moments over `[fromHz, toHz]` of `power`, the power (not amplitude) at 0 … half the sample rate in equal steps of
 * `binHz`; bins at the band's ends count by the share that lies inside. Null when the band holds no power.
 */
export function spectralMoments(
  power: ArrayLike<number>,
  binHz: number,
  fromHz: number,
  toHz: number,
): SpectralMoments | null {
  const first = Math.max(0, Math.round(fromHz / binHz));
  const last = Math.min(power.length - 1, Math.round(toHz / binHz));
  let total = 0;
  let sum = 0;
  for (let k = first; k <= last; k++) {
    const weight = power[k]! * inside(k, binHz, fromHz, toHz);
    total += weight;
    sum += weight * k * binHz;
  }
  if (!(total > 0)) return null;
  const centreHz = sum / total;
  let second = 0;
  let third = 0;
  for (let k = first; k <= last; k++) {
    const weight = power[k]! * inside(k, binHz, fromHz, toHz);
    const away = k * binHz - centreHz;
    second += weight * away * away;
    third += weight * away * away * away;
  }
  const spreadHz = Math.sqrt(second / total);
  const skewness = spreadHz > 0 ? third / total / spreadHz ** 3 : 0;
  return { centreHz, spreadHz, skewness, peakHz: peakOf(power, binHz, first, last) };
}

function inside(k: number, binHz: number, fromHz: number, toHz: number): number {
  const low = Math.max(fromHz, (k - 0.5) * binHz);
  const high = Math.min(toHz, (k + 0.5) * binHz);
  return Math.max(0, (high - low) / binHz);
}

function peakOf(power: ArrayLike<number>, binHz: number, first: number, last: number): number {
  const half = Math.max(1, Math.round(smoothHz / 2 / binHz));
  let best = -1;
  let place = first;
  for (let k = first; k <= last; k++) {
    let sum = 0;
    let count = 0;
    for (let j = Math.max(first, k - half); j <= Math.min(last, k + half); j++) {
      sum += power[j]!;
      count++;
    }
    if (sum / count > best) {
      best = sum / count;
      place = k;
    }
  }
  return place * binHz;
}
