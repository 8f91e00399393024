import { expect, test } from "vitest";
import { gaussHermite } from "../../../../src/statistics/models/gaussHermite.ts";

test.each([1, 2, 3, 7, 10, 25, 60])(
  "gaussHermite(%i) integrates even powers up to its degree exactly",
  (points) => {
    const { nodes, weights } = gaussHermite(points);
    let moment = Math.sqrt(Math.PI);
    for (let power = 0; power <= Math.min(2 * points - 1, 20); power += 2) {
      const sum = weights.reduce((total, weight, q) => total + weight * nodes[q]! ** power, 0);
      expect(sum / moment).toBeCloseTo(1, 11);
      moment *= (power + 1) / 2;
    }
  },
);

test("gaussHermite(5) has the tabulated largest node and weight (Abramowitz & Stegun, table 25.10)", () => {
  const { nodes, weights } = gaussHermite(5);
  expect(nodes[4]).toBeCloseTo(2.020182870456, 11);
  expect(weights[4]).toBeCloseTo(0.01995324205905, 13);
  expect(nodes[2]).toBeCloseTo(0, 15);
});

test("gaussHermite gives ascending, distinct, symmetric nodes", () => {
  const { nodes } = gaussHermite(40);
  for (let q = 1; q < 40; q++) expect(nodes[q]! - nodes[q - 1]!).toBeGreaterThan(0.1);
  for (let q = 0; q < 40; q++) expect(nodes[q]! + nodes[39 - q]!).toBeCloseTo(0, 12);
});
