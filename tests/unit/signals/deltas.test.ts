import { expect, test } from "vitest";
import { deltas } from "../../../src/signals/deltas.ts";

test("deltas of a straight line are its slope at every reach, away from the edges", () => {
  const line = Float32Array.from({ length: 20 }, (_, i) => (i % 2 === 0 ? 3 * (i / 2) : 5));
  for (const reach of [1, 2, 3]) {
    const slope = deltas(line, 2, reach);
    for (let t = reach; t < 10 - reach; t++) {
      expect(slope[2 * t]).toBeCloseTo(3, 6);
      expect(slope[2 * t + 1]).toBe(0);
    }
  }
});

test("deltas(x, 1, 1) is half the difference of the neighbours, edges repeated", () => {
  expect([...deltas(Float32Array.of(1, 4, 2, 8), 1, 1)]).toEqual([1.5, 0.5, 2, 3]);
});

test("deltas refuses a reach below 1", () => {
  expect(() => deltas(new Float32Array(4), 1, 0)).toThrow(/reach 0/);
});
