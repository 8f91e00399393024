import type { BoundaryError } from "./boundaryErrors.ts";

/** How far boundaries lie from a reference. Shares are in %, NaN without boundaries. */
export interface ErrorSummary {
  readonly n: number;
  /** Median and mean of the absolute differences, ms. */
  readonly medianMs: number;
  readonly meanMs: number;
  /** Median of the signed differences, ms: positive where our boundary comes later. */
  readonly biasMs: number;
  readonly within10: number;
  readonly within20: number;
  readonly within50: number;
}

/**
 * Summary of boundary errors. `offsetMs` is taken off each first: two labelling conventions may differ by a constant,
 * and what remains tells how well they agree otherwise.
 */
export function summariseErrors(
  errors: readonly Pick<BoundaryError, "errorMs">[],
  offsetMs = 0,
): ErrorSummary {
  const signed = errors.map(({ errorMs }) => errorMs - offsetMs).sort((a, b) => a - b);
  const absolute = signed.map(Math.abs).sort((a, b) => a - b);
  const n = absolute.length;
  // Times come in steps of 0.1 ms at best: a hair's breadth beyond 20 ms is 20 ms.
  const share = (ms: number) => (100 * absolute.filter((e) => e <= ms + 1e-6).length) / n;
  const median = (sorted: readonly number[]) =>
    n === 0 ? Number.NaN : (sorted[(n - 1) >> 1]! + sorted[n >> 1]!) / 2;
  return {
    n,
    medianMs: median(absolute),
    meanMs: absolute.reduce((sum, e) => sum + e, 0) / n,
    biasMs: median(signed),
    within10: share(10),
    within20: share(20),
    within50: share(50),
  };
}
