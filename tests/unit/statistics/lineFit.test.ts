import { expect, test } from "vitest";
import { lineFit } from "../../../src/statistics/lineFit.ts";

test("lineFit of points on a line finds it, with nothing left over", () => {
  const fit = lineFit([1, 2, 3, 4], [5, 7, 9, 11])!;
  expect(fit).toMatchObject({ n: 4, rSquared: 1 });
  expect(fit.slope).toBeCloseTo(2, 14);
  expect(fit.intercept).toBeCloseTo(3, 14);
  expect(fit.residualSd).toBeCloseTo(0, 12);
});

// Worked out by hand: x̄ = 2.5, Sxx = 5, Sxy = 3.5, residual sum of squares 0.55.
test("lineFit gives the textbook errors", () => {
  const fit = lineFit([1, 2, 3, 4], [1, 2, 2.5, 3])!;
  expect(fit.slope).toBeCloseTo(0.65, 14);
  const squares = [1, 2, 2.5, 3].reduce(
    (sum, y, i) => sum + (y - fit.intercept - fit.slope * (i + 1)) ** 2,
    0,
  );
  expect(fit.residualSd).toBeCloseTo(Math.sqrt(squares / 2), 14);
  expect(fit.slopeError).toBeCloseTo(Math.sqrt(squares / 2 / 5), 14);
  expect(fit.interceptError).toBeCloseTo(Math.sqrt((squares / 2) * (1 / 4 + 6.25 / 5)), 14);
});

test("lineFit is null where there is no line to fit", () => {
  expect(lineFit([1, 2], [1, 2])).toBeNull();
  expect(lineFit([2, 2, 2], [1, 2, 3])).toBeNull();
  expect(lineFit([1, 2, 3], [4, 4, 4])).toMatchObject({ slope: 0, rSquared: Number.NaN });
});
