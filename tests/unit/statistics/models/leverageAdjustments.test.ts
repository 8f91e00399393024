import { expect, test } from "vitest";
import { invertPositiveDefinite } from "../../../../src/statistics/linearAlgebra/invertPositiveDefinite.ts";
import { multiplySquare, transposeSquare } from "../../../../src/statistics/linearAlgebra/square.ts";
import { leverageAdjustments } from "../../../../src/statistics/models/leverageAdjustments.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

const n = 4;
const random = seededRandom(6);

function randomInformation(scale: number): Float64Array {
  const a = Float64Array.from({ length: n * n }, () => scale * random.normal());
  return multiplySquare(a, transposeSquare(a, n), n);
}

// Shares of 1 to 3 clusters take the eigenvectors' way, shares of 40 and more the series'.
test.each([2, 3, 40, 400])(
  "leverageAdjustments of %i clusters: K² times (I − SM) is the identity",
  (clusters) => {
    const information = Array.from({ length: clusters }, () => randomInformation(1));
    const total = information.reduce(
      (sum, own) => sum.map((value, at) => value + own[at]!),
      new Float64Array(n * n),
    );
    const bread = invertPositiveDefinite(total, n)!;
    for (const [g, adjustment] of leverageAdjustments(information, bread, n).entries()) {
      const rest = multiplySquare(information[g]!, bread, n).map(
        (value, at) => (at % (n + 1) === 0 ? 1 : 0) - value,
      );
      const product = multiplySquare(multiplySquare(adjustment, adjustment, n), rest, n);
      for (let at = 0; at < n * n; at++) expect(product[at]).toBeCloseTo(at % (n + 1) === 0 ? 1 : 0, 7);
    }
  },
);

test("leverageAdjustments of the only cluster are 0: it decides everything itself", () => {
  const information = randomInformation(1);
  const [adjustment] = leverageAdjustments([information], invertPositiveDefinite(information, n)!, n);
  for (const value of adjustment!) expect(Math.abs(value)).toBeLessThan(1e-6);
});
