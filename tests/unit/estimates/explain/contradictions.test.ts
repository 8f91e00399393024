import { expect, test } from "vitest";
import { contradictions } from "../../../../src/estimates/explain/contradictions.ts";
import type { Effect, Model } from "../../../../src/estimates/explain/explanation.ts";
import { modelsContradict } from "../../../../src/messages/explain.ts";

const effect = (level: string, estimate: number, low: number | null, high: number | null) =>
  ({ term: "after", level, ratio: { estimate, low, high } }) as Effect;
const model = (kind: Model["kind"], effects: readonly Effect[]) => ({ kind, effects }) as unknown as Model;

const column = (values: readonly string[]) => {
  const labels = [...new Set(values)];
  return { codes: Uint32Array.from(values, (value) => labels.indexOf(value)), labels };
};
const columns = { after: column(["pause", "pause", "pause", "k", "k", "t"]) };
const items = { unit: "word" as const, column: column(["です", "です", "ます", "来た", "月", "人"]) };
const counted = new Uint8Array(6).fill(1);

const found = (clustered: Effect, mixed: Effect) =>
  contradictions([model("clustered", [clustered]), model("mixed", [mixed])], columns, items, counted);

test("contradictions names the term, what both models say, and the word that carries the level", () => {
  const [text, ...more] = found(effect("pause", 0.001, 0.0005, 0.5), effect("pause", 2, 1.5, 3));
  expect(more).toEqual([]);
  expect(text).toBe(
    modelsContradict(
      "after=pause",
      { clustered: "< 0.005, < 0.005 to 0.50", mixed: "2.00, 1.50 to 3.00" },
      { item: "です", unit: "word", share: 2 / 3 },
    ),
  );
  expect(text).toContain("67 % of its vowels stand in one word (です)");
});

test("contradictions needs opposite signs with one interval clear of none, or intervals apart", () => {
  expect(found(effect("k", 0.9, 0.5, 1.5), effect("k", 1.2, 0.9, 1.6))).toEqual([]);
  expect(found(effect("k", 2, 1.5, 3), effect("k", 3, 2, 5))).toEqual([]);
  expect(found(effect("k", 0.8, 0.3, 1.9), effect("k", 1.5, 1.1, 2)).length).toBe(1);
  expect(found(effect("k", 1.2, 1.1, 1.3), effect("k", 3, 2, 5)).length).toBe(1);
  expect(found(effect("k", 0.5, null, null), effect("k", 3, 2, 5))).toEqual([]);
});

test("contradictions names no word where the level's vowels are spread, or not counted", () => {
  const spread = { unit: "word" as const, column: column(["a", "b", "c", "d", "e", "f"]) };
  const models = [
    model("clustered", [effect("pause", 0.2, 0.1, 0.4)]),
    model("mixed", [effect("pause", 2, 1.5, 3)]),
  ];
  expect(contradictions(models, columns, spread, counted)[0]).not.toContain("stand in one");
  const few = Uint8Array.from([0, 0, 1, 1, 1, 1]);
  expect(contradictions(models, columns, items, few)[0]).toContain(
    "100 % of its vowels stand in one word (ます)",
  );
});
