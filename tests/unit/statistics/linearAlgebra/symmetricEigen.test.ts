import { expect, test } from "vitest";
import { symmetricEigen } from "../../../../src/statistics/linearAlgebra/symmetricEigen.ts";

test("symmetricEigen of a 2 × 2 matrix: closed form", () => {
  const { values } = symmetricEigen(Float64Array.of(2, 1, 1, 2), 2);
  expect([...values].sort()).toEqual([expect.closeTo(1, 15), expect.closeTo(3, 15)]);
});

test("symmetricEigen of the second-difference matrix has eigenvalues 2 − 2cos(kπ/(n+1)) and rebuilds it", () => {
  const n = 12;
  const a = Float64Array.from({ length: n * n }, (_, at) => {
    const gap = Math.abs(Math.floor(at / n) - (at % n));
    return gap === 0 ? 2 : gap === 1 ? -1 : 0;
  });
  const { values, vectors } = symmetricEigen(a, n);
  const sorted = [...values].sort((x, y) => x - y);
  for (let k = 1; k <= n; k++)
    expect(sorted[k - 1]).toBeCloseTo(2 - 2 * Math.cos((k * Math.PI) / (n + 1)), 13);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let k = 0; k < n; k++) sum += vectors[i * n + k]! * values[k]! * vectors[j * n + k]!;
      expect(sum).toBeCloseTo(a[i * n + j]!, 12);
    }
});
