import { describe, expect, test } from "vitest";
import { largestOf, smallestOf } from "../../../src/estimates/extremeOf.ts";
import { normalMultiplier } from "../../../src/statistics/distributions.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

const member = (estimate: number, error: number) => ({
  estimate,
  at: (level: number) => {
    const half = normalMultiplier(level) * error;
    return { low: estimate - half, high: estimate + half };
  },
});

describe("smallestOf", () => {
  test("of one member is its own interval", () => {
    expect(smallestOf([member(2, 0.1)], 0.95)).toEqual({ estimate: 2, place: 0, ...member(2, 0.1).at(0.95) });
  });

  test("takes the lowest lower bound as it is and the lowest upper bound at Bonferroni's level", () => {
    const got = smallestOf([member(3, 0.1), member(2, 0.2)], 0.95)!;
    expect(got.place).toBe(1);
    expect(got.low).toBe(member(2, 0.2).at(0.95).low);
    expect(got.high).toBe(member(2, 0.2).at(0.975).high);
  });

  test("holds the smallest true value at least as often as its level says, also when all are equal", () => {
    const random = seededRandom(3);
    for (const truths of [
      [1, 1, 1, 1, 1],
      [1, 1.1, 1.2, 2, 3],
    ]) {
      let held = 0;
      for (let draw = 0; draw < 2000; draw++) {
        const { low, high } = smallestOf(
          truths.map((truth) => member(truth + 0.2 * random.normal(), 0.2)),
          0.9,
        )!;
        if (low <= 1 && high >= 1) held++;
      }
      expect(held / 2000).toBeGreaterThan(0.89);
    }
  });

  test("of none is null", () => {
    expect(smallestOf([], 0.95)).toBeNull();
  });
});

test("largestOf is the smallest of the negatives, turned", () => {
  const members = [member(3, 0.1), member(2, 0.2)];
  const turned = smallestOf([member(-3, 0.1), member(-2, 0.2)], 0.95)!;
  const got = largestOf(members, 0.95)!;
  expect(got.place).toBe(0);
  expect([got.low, got.high]).toEqual([-turned.high, -turned.low]);
});
