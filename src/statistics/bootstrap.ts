import { normalCdf, normalQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";
import type { SeededRandom } from "./seededRandom.ts";

export interface BootstrapOptions {
  readonly level: number;
  /** Default 1999: the bounds of a 95 % interval then rest on about 50 draws each. */
  readonly resamples?: number;
  readonly random: SeededRandom;
}

/**
 * Interval of a statistic of clusters by resampling whole clusters, bias-corrected and accelerated.
 * `statistic` gets how often each of the `clusters` counts (all 1 for the data as they are) and may return NaN for a
 * resample without meaning, which is then left out. Null for fewer than three clusters or when hardly any resample has
 * a meaning. Source: Efron B. (1987) JASA 82:171–185; Davison A. C. & Hinkley D. V. (1997) Bootstrap Methods, ch. 3.8.
 */
export function clusterBootstrap(
  clusters: number,
  statistic: (times: Float64Array) => number,
  { level, resamples = 1999, random }: BootstrapOptions,
): Interval | null {
  if (clusters < 3) return null;
  const times = new Float64Array(clusters).fill(1);
  const estimate = statistic(times);
  const leftOut = Float64Array.from({ length: clusters }, (_, k) => {
    times[k] = 0;
    const value = statistic(times);
    times[k] = 1;
    return value;
  });
  const drawn: number[] = [];
  for (let round = 0; round < resamples; round++) {
    times.fill(0);
    for (let k = 0; k < clusters; k++) times[random.below(clusters)]! += 1;
    const value = statistic(times);
    if (Number.isFinite(value)) drawn.push(value);
  }
  if (drawn.length < 0.9 * resamples || !leftOut.every(Number.isFinite)) return null;
  const sorted = Float64Array.from(drawn).sort();
  const bias = normalQuantile(clamp(shareBelow(sorted, estimate), 1 / (resamples + 1)));
  const acceleration = accelerationOf(leftOut);
  const bound = (p: number) => {
    const z = bias + normalQuantile(p);
    return quantileOf(sorted, normalCdf(bias + z / (1 - acceleration * z)));
  };
  return { low: bound((1 - level) / 2), high: bound((1 + level) / 2) };
}

function accelerationOf(leftOut: Float64Array): number {
  const mean = leftOut.reduce((sum, value) => sum + value, 0) / leftOut.length;
  let squares = 0;
  let cubes = 0;
  for (const value of leftOut) {
    squares += (mean - value) ** 2;
    cubes += (mean - value) ** 3;
  }
  return squares > 0 ? cubes / (6 * squares ** 1.5) : 0;
}

function shareBelow(sorted: Float64Array, value: number): number {
  let below = 0;
  for (const drawn of sorted) below += drawn < value ? 1 : drawn === value ? 0.5 : 0;
  return below / sorted.length;
}

function quantileOf(sorted: Float64Array, p: number): number {
  const place = clamp(p, 0) * (sorted.length - 1);
  const below = Math.floor(place);
  const above = Math.min(sorted.length - 1, below + 1);
  return sorted[below]! + (place - below) * (sorted[above]! - sorted[below]!);
}

function clamp(p: number, margin: number): number {
  return Math.min(1 - margin, Math.max(margin, p));
}
