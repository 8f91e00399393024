import { expect, test } from "vitest";
import type { Effect, Model } from "../../../../src/estimates/explain/explanation.ts";
import { muchWiderEffects } from "../../../../src/estimates/explain/muchWiderEffects.ts";
import { muchWider } from "../../../../src/messages/explain.ts";

const effect = (level: string, low: number | null, high: number | null) =>
  ({ term: "t", level, ratio: { estimate: 1, low, high } }) as Effect;
const model = (kind: Model["kind"], effects: readonly Effect[]) => ({ kind, effects }) as unknown as Model;

test("muchWiderEffects names effects whose clustered interval is over twice as wide, on the log scale", () => {
  const mixed = model("mixed", [
    effect("a", 0.5, 2),
    effect("b", 0.5, 2),
    effect("c", 0.5, 2),
    effect("d", null, null),
  ]);
  const clustered = model("clustered", [
    effect("a", 0.24, 4),
    effect("b", 0.26, 4),
    effect("c", null, null),
    effect("d", 0.1, 10),
  ]);
  expect(muchWiderEffects([clustered, mixed])).toEqual([muchWider(["t=a"])]);
  expect(muchWiderEffects([clustered])).toEqual([]);
});
