import { expect, test } from "vitest";
import { proportionDifference } from "../../../src/statistics/proportionDifference.ts";

// Newcombe R. G. (1998) Stat. Med. 17:873–890, Table II (a): 56/70 − 48/80, method 10: 0.0524 to 0.3339 (from memory).
// Devoicing in conversation (1585/1785) and reading (1097/1732), Imai T. (2010) Table 6.1: worked out from the formula.
test("proportionDifference gives the known intervals", () => {
  const a = proportionDifference({ successes: 56, n: 70 }, { successes: 48, n: 80 });
  expect(a.low).toBeCloseTo(0.0524, 4);
  expect(a.high).toBeCloseTo(0.3339, 4);
  const b = proportionDifference({ successes: 1585, n: 1785 }, { successes: 1097, n: 1732 });
  expect(b.low).toBeCloseTo(0.2274, 4);
  expect(b.high).toBeCloseTo(0.2814, 4);
});

test("proportionDifference changes sign with the order and stays inside −1 and 1", () => {
  const [a, b] = [
    { successes: 0, n: 4 },
    { successes: 7, n: 7 },
  ];
  const forth = proportionDifference(a, b);
  const back = proportionDifference(b, a);
  expect(forth.low).toBeCloseTo(-back.high, 14);
  expect(forth.low).toBeGreaterThanOrEqual(-1);
});
