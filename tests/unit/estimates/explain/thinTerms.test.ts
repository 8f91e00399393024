import { expect, test } from "vitest";
import { thinTerms } from "../../../../src/estimates/explain/thinTerms.ts";
import { designOf, labelled } from "../../statistics/models/toyData.ts";

const times = (n: number, value: string) => Array.from({ length: n }, () => value);
const c1 = labelled([...times(40, "a"), ...times(40, "b"), ...times(10, "c")]);
const rate = Float64Array.from({ length: 90 }, (_, i) => i % 7);
const design = designOf({ c1, rate }, [{ column: "c1" }, { column: "rate" }]);
const speakers = (count: number) => labelled(Array.from({ length: 90 }, (_, i) => `s${i % count}`));
const every = (n: number) => Float64Array.from({ length: 90 }, (_, i) => Number(i % n === 0));

test("thinTerms finds levels with few tokens, or all where there are two outcomes and the reference has few of one", () => {
  const { isThin } = thinTerms(design, speakers(5), null);
  expect(["a", "b", "c"].map((level) => isThin("c1", level))).toEqual([false, false, true]);
  expect(isThin("rate", null)).toBe(false);
  const rare = Float64Array.from({ length: 90 }, (_, i) => Number(i < 3 || (i >= 40 && i % 2 === 0)));
  expect(["b", "c"].map((level) => thinTerms(design, speakers(5), rare).isThin("c1", level))).toEqual([
    true,
    true,
  ]);
});

test("thinTerms asks for three speakers, or all where there are two; a number needs five of either outcome", () => {
  for (const count of [1, 2, 3])
    expect(thinTerms(design, speakers(count), every(2)).isThin("c1", "b")).toBe(false);
  const apart = labelled(Array.from({ length: 90 }, (_, i) => (i < 40 ? "s0" : `s${i % 3}`)));
  expect(thinTerms(design, apart, every(2)).isThin("c1", "b")).toBe(true);
  const { isThin, texts } = thinTerms(design, speakers(3), every(30));
  expect(isThin("rate", null)).toBe(true);
  expect(texts.at(-1)).toContain("only 3 tokens of the rarer outcome");
});
