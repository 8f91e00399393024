import { expect, test } from "vitest";
import type { Stratum } from "../../../src/estimates/pairedRatio.ts";
import { ratioQuotient } from "../../../src/estimates/ratioQuotient.ts";
import { type SeededRandom, seededRandom } from "../../../src/statistics/seededRandom.ts";

/** Strata of `speakers` speakers whose log ratio is `own[k] + shift`. */
function strataOf(random: SeededRandom, own: readonly number[], shift: number, spread: number): Stratum[] {
  const sums = (mean: number, tokens: number) => {
    const values = Array.from({ length: tokens }, () => mean + 0.35 * random.normal());
    const sum = (f: (x: number) => number) => values.reduce((total, x) => total + f(x), 0);
    return { tokens, sumLogMs: sum((x) => x), sumSquareLogMs: sum((x) => x * x) };
  };
  return own.map((ratio, speaker) => ({
    speaker,
    phone: 0,
    long: sums(4 + ratio + shift + spread * random.normal(), 12),
    short: sums(4, 30),
  }));
}

test("ratioQuotient of a ratio with itself is 1 and certain only as far as tokens allow", () => {
  const strata = strataOf(seededRandom(1), [0.8, 0.9, 1], 0, 0);
  const got = ratioQuotient(strata, strata, 0.95)!;
  expect(got.quotient).toBeCloseTo(1, 12);
  expect(got.low).toBeLessThan(1);
  expect(got.high).toBeGreaterThan(1);
  expect(got.p).toBeCloseTo(1, 10);
});

test("ratioQuotient inverts with the order and is null without spread", () => {
  const random = seededRandom(2);
  const [a, b] = [strataOf(random, [0.8, 0.9, 1.1], 0.2, 0.1), strataOf(random, [0.8, 0.9, 1.1], 0, 0.1)];
  const [forth, back] = [ratioQuotient(a, b, 0.95)!, ratioQuotient(b, a, 0.95)!];
  expect(forth.quotient * back.quotient).toBeCloseTo(1, 12);
  expect(forth.low * back.high).toBeCloseTo(1, 12);
  expect(ratioQuotient(a, [], 0.95)).toBeNull();
});

test("ratioQuotient holds the true quotient about as often as it says, though speakers differ in their ratio", () => {
  const random = seededRandom(3);
  let held = 0;
  const draws = 800;
  for (let draw = 0; draw < draws; draw++) {
    const own = Array.from({ length: 12 }, () => 0.9 + 0.3 * random.normal());
    const got = ratioQuotient(strataOf(random, own, 0.2, 0.1), strataOf(random, own, 0, 0.1), 0.95)!;
    held += got.low <= Math.exp(0.2) && Math.exp(0.2) <= got.high ? 1 : 0;
  }
  expect(held / draws).toBeGreaterThan(0.93);
  expect(held / draws).toBeLessThan(0.985);
});
