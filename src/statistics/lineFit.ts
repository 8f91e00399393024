import { compensatedSum } from "./summary.ts";

/** Straight line by least squares, y = intercept + slope·x. Errors are those of independent points. */
export interface LineFit {
  readonly n: number;
  readonly intercept: number;
  readonly slope: number;
  readonly interceptError: number;
  readonly slopeError: number;
  /** Share of the variance of y that the line explains; NaN when y does not vary. */
  readonly rSquared: number;
  /** Standard deviation of the residuals (n − 2). */
  readonly residualSd: number;
}

/**
 * Least-squares line; null for fewer than three points or when x does not vary. Sums are compensated and the fit is
 * refined once on its own residuals, so that the digits of the data are kept (NIST StRD Norris: 13 and more).
 */
export function lineFit(x: ArrayLike<number>, y: ArrayLike<number>): LineFit | null {
  const n = x.length;
  if (n < 3) return null;
  const xMean = compensatedSum(x) / n;
  const xs = Float64Array.from(x, (value) => value - xMean);
  const sxx = compensatedSum(xs.map((value) => value * value));
  if (!(sxx > 0)) return null;
  const level = (values: ArrayLike<number>) => compensatedSum(values) / n;
  const tilt = (values: ArrayLike<number>) => compensatedSum(xs.map((value, i) => value * values[i]!)) / sxx;

  const yMean = level(y);
  const ys = Float64Array.from(y, (value) => value - yMean);
  let centre = level(ys);
  let slope = tilt(ys);
  let residuals = ys.map((value, i) => value - centre - slope * xs[i]!);
  const [moreCentre, moreSlope] = [level(residuals), tilt(residuals)];
  residuals = residuals.map((value, i) => value - moreCentre - moreSlope * xs[i]!);
  centre += moreCentre;
  slope += moreSlope;

  const squares = compensatedSum(residuals.map((value) => value * value));
  const total = compensatedSum(ys.map((value) => value * value));
  const variance = squares / (n - 2);
  return {
    n,
    intercept: compensatedSum([yMean, centre, -slope * xMean]),
    slope,
    interceptError: Math.sqrt(variance * (1 / n + (xMean * xMean) / sxx)),
    slopeError: Math.sqrt(variance / sxx),
    rSquared: total > 0 ? 1 - squares / total : Number.NaN,
    residualSd: Math.sqrt(variance),
  };
}
