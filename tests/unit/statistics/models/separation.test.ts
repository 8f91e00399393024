import { describe, expect, test } from "vitest";
import { logisticNewton } from "../../../../src/statistics/models/logisticNewton.ts";
import { logisticOrSeparated } from "../../../../src/statistics/models/logisticOrSeparated.ts";
import { separation } from "../../../../src/statistics/models/separation.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";
import { designOf, labelled } from "./toyData.ts";

const random = seededRandom(11);
const size = 300;
const ones = new Float64Array(size).fill(1);
const x = Float64Array.from({ length: size }, () => random.normal());
const columns = {
  a: labelled(Array.from({ length: size }, () => `a${random.below(2)}`)),
  b: labelled(Array.from({ length: size }, () => `b${random.below(3)}`)),
  x,
};
const chance = () => (random.uniform() < 0.4 ? 1 : 0);
const outcome = (rule: (i: number) => number | null) =>
  Float64Array.from({ length: size }, (_, i) => rule(i) ?? chance());
const terms = [{ column: "a" }, { column: "b" }, { column: "x" }];

function found(successes: Float64Array, formula: Parameters<typeof designOf>[1] = terms) {
  const design = designOf(columns, formula);
  const result = logisticOrSeparated(design, { successes, trials: ones, tokens: size });
  return "separated" in result ? result.separated.texts : [];
}

describe("logisticOrSeparated", () => {
  test("names a level without successes and one with nothing else", () => {
    const level = (i: number) => columns.b.labels[columns.b.codes[i]!];
    const named = found(outcome((i) => (level(i) === "b1" ? 0 : level(i) === "b2" ? 1 : null)));
    expect([...named].sort()).toEqual([
      expect.stringMatching(/^b=b1: none of its \d+ tokens/),
      expect.stringMatching(/^b=b2: all of its \d+ tokens/),
    ]);
  });

  test("finds a threshold on a number that predicts every outcome", () => {
    expect(found(outcome((i) => (x[i]! > 0.2 ? 1 : 0))).join()).toMatch(
      /x predicts 300 tokens without exception/,
    );
  });

  test("finds a threshold beyond which there are no exceptions, with mixed outcomes at one value", () => {
    const coarse = { ...columns, x: x.map((value) => Math.round(value)) };
    const successes = outcome((i) => (coarse.x[i]! > 0 ? 1 : coarse.x[i]! < 0 ? 0 : null));
    const design = designOf(coarse, [{ column: "x" }]);
    const result = logisticOrSeparated(design, { successes, trials: ones, tokens: size });
    expect(result).toHaveProperty("separated.texts", [expect.stringContaining("x")]);
  });

  test("finds a pair of levels without exceptions", () => {
    const [a, b] = [columns.a.labels[1], columns.b.labels[2]];
    const both = (i: number) => columns.a.codes[i] === 1 && columns.b.codes[i] === 2;
    const formula = [{ column: "a" }, { column: "b" }, { interaction: ["a", "b"] }];
    expect(
      found(
        outcome((i) => (both(i) ? 1 : null)),
        formula,
      ).join(),
    ).toContain(`a=${a} × b=${b} predicts`);
  });

  test("finds every coefficient without a finite estimate, also of two combinations, and no other", () => {
    // First a1 has one outcome; then x also has a threshold among a0.
    const c = labelled(Array.from({ length: size }, (_, i) => `c${(i * 7) % 2}`));
    const design = designOf({ ...columns, c }, [{ column: "a" }, { column: "c" }, { column: "x" }]);
    const successes = outcome((i) => (columns.a.codes[i] === 1 ? 1 : null));
    const result = logisticOrSeparated(design, { successes, trials: ones, tokens: size });
    expect(result).toHaveProperty("separated.coefficients", [1]);
    const both = outcome((i) => (columns.a.codes[i] === 1 ? 1 : x[i]! > 0 ? 1 : 0));
    const twice = logisticOrSeparated(design, { successes: both, trials: ones, tokens: size });
    expect(twice).toHaveProperty("separated.coefficients", expect.arrayContaining([1, 3]));
  });

  test("finds nothing where one exception remains", () => {
    const formula = [{ column: "a" }];
    const first = columns.a.codes.indexOf(1);
    expect(
      found(
        outcome((i) => (columns.a.codes[i] === 1 ? (i === first ? 0 : 1) : null)),
        formula,
      ),
    ).toEqual([]);
  });

  test("very rare but present outcomes are not separation", () => {
    const design = designOf({ g: labelled(["p", "q"]) }, [{ column: "g" }]);
    const counts = { successes: Float64Array.of(3, 5e5), trials: Float64Array.of(1e7, 1e6), tokens: 1.1e7 };
    const result = logisticOrSeparated(design, counts);
    expect("newton" in result && result.newton.converged).toBe(true);
  });
});

test("separation returns a direction that is right on every row it names", () => {
  const design = designOf(columns, terms);
  const successes = outcome((i) => (x[i]! > 0 ? 1 : 0));
  const { eta } = logisticNewton(design.matrix, successes, ones);
  const { rows, direction } = separation(design.matrix, successes, ones, eta, 10)!;
  expect(rows.length).toBe(size);
  expect(Math.abs(direction[4]!)).toBeGreaterThan(0);
});
