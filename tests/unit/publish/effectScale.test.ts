import { describe, expect, test } from "vitest";
import { regionOf } from "../../../src/findings/rules/region.ts";
import { effectScale } from "../../../src/publish/effectScale.ts";

const between = regionOf({ when: "between", from: 2, to: 3 }, "ratio");
const extent = (estimate: number, low: number | null, high: number | null) => ({ estimate, low, high });

describe("effectScale", () => {
  test("puts ratios on a log scale that takes in 1, the region and the interval", () => {
    const { at, ticks } = effectScale("ratio", between, [extent(2.2, 1.9, 2.5)]);
    expect(at(2) - at(1)).toBeCloseTo(at(3) - at(1.5), 12);
    for (const value of [1, 1.9, 2.5, 3]) {
      expect(at(value)).toBeGreaterThan(0);
      expect(at(value)).toBeLessThan(1);
    }
    expect(ticks.map(({ text }) => text)).toContain("2×");
  });

  test("keeps open and wild ends at the edges", () => {
    const { at } = effectScale("ratio", between, [extent(2.2, 0, null), extent(40, 9, 400)]);
    expect([at(0), at(Number.NEGATIVE_INFINITY), at(Number.POSITIVE_INFINITY), at(400)]).toEqual([
      0, 0, 1, 1,
    ]);
    expect(at(3)).toBeLessThan(0.85);
  });

  test("shows shares from 0 to 100 %", () => {
    const { at, ticks } = effectScale("share", regionOf({ when: "more-than", value: 0.95 }, "share"), []);
    expect([at(0), at(0.5), at(1)]).toEqual([0, 0.5, 1]);
    expect(ticks.map(({ text }) => text)).toEqual([
      "0\u00a0%",
      "25\u00a0%",
      "50\u00a0%",
      "75\u00a0%",
      "100\u00a0%",
    ]);
  });

  test("shows differences with 0 and signed ticks in points", () => {
    const region = regionOf({ when: "less-than", value: 0, negligible: 0.05 }, "difference");
    const { at, ticks } = effectScale("difference", region, [extent(-0.4, -0.8, -0.1)]);
    expect(at(0)).toBeLessThan(1);
    expect(at(-0.8)).toBeGreaterThan(0);
    expect(ticks.map(({ text }) => text)).toEqual(["−80", "−60", "−40", "−20", "0"]);
  });

  test.each(["ratio", "difference"] as const)("never crowds the ticks of a %s", (scale) => {
    for (const high of [1.01, 1.3, 2, 4, 6]) {
      const region = regionOf({ when: "more-than", value: scale === "ratio" ? 1 : 0 }, scale);
      const { at, ticks } = effectScale(scale, region, [extent(high - 0.5, high - 1, high)]);
      const places = ticks.map(({ value }) => at(value));
      expect(places.length).toBeGreaterThan(1);
      for (let i = 1; i < places.length; i++) expect(places[i]! - places[i - 1]!).toBeGreaterThan(0.09);
    }
  });
});
