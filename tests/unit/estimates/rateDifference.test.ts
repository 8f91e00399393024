import { expect, test } from "vitest";
import { type RateDifference, rateDifference } from "../../../src/estimates/rateDifference.ts";
import { tQuantile } from "../../../src/statistics/distributions.ts";
import { proportionDifference } from "../../../src/statistics/proportionDifference.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

test("rateDifference of one speaker is Newcombe's interval", () => {
  const got = rateDifference({ marked: [70], devoiced: [56] }, { marked: [80], devoiced: [48] }, 0.95)!;
  expect(got).toMatchObject({ method: "one-speaker", difference: 0.8 - 0.6 });
  const { low, high } = proportionDifference({ successes: 56, n: 70 }, { successes: 48, n: 80 });
  expect([got.low, got.high]).toEqual([low, high]);
});

test("rateDifference of equal speakers is the paired t interval, and its p-value the paired t test's", () => {
  const a = [30, 35, 12, 38, 25, 20];
  const b = [10, 30, 8, 20, 22, 3];
  const gaps = a.map((x, k) => (x - b[k]!) / 40);
  const mean = gaps.reduce((s, x) => s + x) / 6;
  const sd = Math.sqrt(gaps.reduce((s, x) => s + (x - mean) ** 2, 0) / 5);
  const marked = a.map(() => 40);
  const got = rateDifference({ marked, devoiced: a }, { marked, devoiced: b }, 0.95)!;
  expect(got.difference).toBeCloseTo(mean, 12);
  expect(got.high).toBeCloseTo(mean + (tQuantile(0.975, 5) * sd) / Math.sqrt(6), 10);
});

test("rateDifference changes sign with the order and is null for an empty cut", () => {
  const a = { marked: [10, 20, 0], devoiced: [5, 8, 0] };
  const b = { marked: [30, 5, 9], devoiced: [3, 2, 1] };
  const [forth, back] = [rateDifference(a, b, 0.9)!, rateDifference(b, a, 0.9)!];
  expect(forth.low).toBeCloseTo(-back.high, 12);
  expect(forth.p).toBeCloseTo(back.p, 12);
  expect(rateDifference(a, { marked: [0, 0, 0], devoiced: [0, 0, 0] }, 0.95)).toBeNull();
});

test("rateDifference gives finite numbers for none, all and equal", () => {
  for (const devoiced of [
    [0, 0],
    [10, 10],
    [0, 10],
  ]) {
    const got = rateDifference({ marked: [10, 10], devoiced }, { marked: [10, 10], devoiced }, 0.95)!;
    for (const name of [
      "difference",
      "low",
      "high",
      "p",
    ] as const satisfies readonly (keyof RateDifference)[])
      expect(Number.isFinite(got[name])).toBe(true);
    expect(got.p).toBe(1);
  }
});

// Speakers differ in how much they devoice at all (which cancels) and in the difference (which does not).
test("rateDifference holds the true difference about as often as it says", () => {
  const random = seededRandom(9);
  const inverse = (x: number) => 1 / (1 + Math.exp(-x));
  let held = 0;
  const draws = 1500;
  for (let draw = 0; draw < draws; draw++) {
    const counts = { a: [] as number[], b: [] as number[], na: [] as number[], nb: [] as number[] };
    for (let k = 0; k < 15; k++) {
      const own = 0.8 * random.normal();
      const [na, nb] = [15 + random.below(40), 15 + random.below(40)];
      counts.na.push(na);
      counts.nb.push(nb);
      counts.a.push(random.binomial(na, inverse(own + 0.7 + 0.3 * random.normal())));
      counts.b.push(random.binomial(nb, inverse(own - 0.7 + 0.3 * random.normal())));
    }
    const got = rateDifference(
      { marked: counts.na, devoiced: counts.a },
      { marked: counts.nb, devoiced: counts.b },
      0.95,
    )!;
    // E[inverse(N(±0.7, 0.8² + 0.3²))], by numerical integration below.
    const truth = 2 * meanInverse(0.7, Math.hypot(0.8, 0.3)) - 1;
    held += got.low <= truth && truth <= got.high ? 1 : 0;
  }
  expect(held / draws).toBeGreaterThan(0.93);
  expect(held / draws).toBeLessThan(0.98);
});

function meanInverse(centre: number, sd: number): number {
  let sum = 0;
  let weights = 0;
  for (let z = -6; z <= 6; z += 0.01) {
    const weight = Math.exp((-z * z) / 2);
    weights += weight;
    sum += weight / (1 + Math.exp(-centre - sd * z));
  }
  return sum / weights;
}

// A cut that few of the speakers show is as uncertain as those few make it.
test.each([2, 3, 5])(
  "rateDifference of a cut with %i speakers against one with 20 keeps its level",
  (few) => {
    const random = seededRandom(30 + few);
    const inverse = (x: number) => 1 / (1 + Math.exp(-x));
    const truth = meanInverse(1, 0.5) - meanInverse(-0.5, 0.5);
    const draws = 1000;
    let held = 0;
    for (let draw = 0; draw < draws; draw++) {
      const leans = Array.from({ length: 20 }, () => 0.5 * random.normal());
      const cut = (speakers: number, centre: number) => {
        const marked = leans.map((_, k) => (k < speakers ? 40 + random.below(40) : 0));
        return {
          marked,
          devoiced: marked.map((n, k) => (n ? random.binomial(n, inverse(centre + leans[k]!)) : 0)),
        };
      };
      const { low, high } = rateDifference(cut(few, 1), cut(20, -0.5), 0.95)!;
      held += low <= truth && truth <= high ? 1 : 0;
    }
    expect(held / draws).toBeGreaterThan(0.93);
  },
);

test("rateDifference leaves the interval open where one of several speakers makes up a cut", () => {
  const marked = [50, 50, 50];
  const alone = { marked: [60, 0, 0], devoiced: [50, 0, 0] };
  const got = rateDifference(alone, { marked, devoiced: [10, 12, 9] }, 0.95)!;
  expect(got).toMatchObject({ low: -1, high: 1, p: 1, method: "lone-speaker" });
  expect(got.difference).toBeCloseTo(50 / 60 - 31 / 150, 12);
});
