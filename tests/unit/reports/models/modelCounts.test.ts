import { expect, test } from "vitest";
import { countsOf } from "../../../../reports/components/models/modelCounts.ts";
import type { Explanation } from "../../../../src/estimates/explain/explanation.ts";

const explanation = (basis: Explanation["basis"]) =>
  ({
    ...{ tokens: 120, population: "short vowels", speakers: 5, words: 30 },
    ...{ basis, outcome: "devoicing" },
  }) as Explanation;

test("countsOf tells counts with their basis, and nothing where there is none to state", () => {
  expect(countsOf(explanation("annotated"))).toMatch(/120.*5 speakers.*marked by a person/);
  expect(countsOf(explanation(null))).toBe("");
});
