import { expect, test } from "vitest";
import { boundByFloorShares } from "../../../../src/findings/rules/floorBound.ts";

const interval = { low: 1.8, high: 2.2 };

test("boundByFloorShares changes nothing without tokens at the floor", () => {
  expect(boundByFloorShares(interval, 0, 0)).toEqual({ judged: interval, bound: null, warnings: [] });
});

test("boundByFloorShares opens upwards when short sounds stand at the floor", () => {
  const { judged, bound, warnings } = boundByFloorShares(interval, 0, 0.2);
  expect(judged).toEqual({ low: 1.8, high: Number.POSITIVE_INFINITY });
  expect(bound).toBe("at least");
  expect(warnings).toHaveLength(1);
});

test("boundByFloorShares opens downwards when the first sounds stand there", () => {
  const { judged, bound } = boundByFloorShares(interval, 0.2, 0);
  expect(judged).toEqual({ low: 0, high: 2.2 });
  expect(bound).toBe("at most");
});

test("boundByFloorShares with both at the floor lowers the lower end as if they had lasted a third of it", () => {
  const { judged, bound } = boundByFloorShares(interval, 0.1, 0.2);
  expect(judged.low).toBeCloseTo(1.8 * (1 / 3) ** 0.1, 12);
  expect(judged.high).toBe(Number.POSITIVE_INFINITY);
  expect(bound).toBeNull();
});
