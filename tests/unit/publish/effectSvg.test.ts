import { describe, expect, test } from "vitest";
import { regionOf } from "../../../src/findings/rules/region.ts";
import { effectScale } from "../../../src/publish/effectScale.ts";
import { effectSvg } from "../../../src/publish/effectSvg.ts";

const region = regionOf({ when: "more-than", value: 1, negligible: 0.1 }, "ratio");
const effect = { estimate: 1.5, low: 1.2, high: 1.9, place: "holds", text: "1.50 times" } as const;
const scale = effectScale("ratio", region, [effect]);
const draw = (changes: Partial<Parameters<typeof effectSvg>[0]> = {}) =>
  effectSvg({ ...effect, ...changes }, region, scale, "a label").markup;
const numbersOf = (markup: string, pattern: RegExp) => pattern.exec(markup)!.slice(1).map(Number);
const lineOf = (markup: string) => numbersOf(markup, /effect-line [a-z]+"><line x1="([\d.]+)" x2="([\d.]+)"/);
const rectOf = (markup: string, name: string) =>
  numbersOf(markup, new RegExp(`<rect class="${name}"[^>]*? x="([\\d.]+)" y="[\\d.]+" width="([\\d.]+)"`));

describe("effectSvg", () => {
  test("draws the interval inside the region's band, the estimate inside the interval", () => {
    const markup = draw();
    const [from, width] = rectOf(markup, "region");
    const [left, right] = lineOf(markup);
    expect(left).toBeGreaterThan(from!);
    expect(right).toBeLessThan(from! + width!);
    const [dot] = numbersOf(markup, /<circle cx="([\d.]+)"/);
    expect(dot).toBeGreaterThan(left!);
    expect(dot).toBeLessThan(right!);
    expect(markup).not.toContain("open-end");
  });

  test("hatches what is too small to matter at the region's edge", () => {
    const markup = draw();
    const [region, small] = [rectOf(markup, "region"), rectOf(markup, "negligible")];
    expect(small[0]).toBe(region[0]);
    expect(small[1]).toBeLessThan(region[1]!);
  });

  test("ends an open side at the picture's edge with an arrow", () => {
    const [trackFrom, trackWidth] = rectOf(draw(), "track");
    const up = draw({ high: null });
    expect(lineOf(up)[1]).toBe(trackFrom! + trackWidth!);
    expect(up.match(/open-end/g)).toHaveLength(1);
    const down = draw({ low: null });
    expect(lineOf(down)[0]).toBe(trackFrom);
    expect(down.match(/open-end/g)).toHaveLength(1);
  });

  test("draws no line without an interval, and never a number that is none", () => {
    const markup = draw({ low: null, high: null, estimate: null });
    expect(markup).not.toContain("effect-line");
    expect(markup).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  test("carries its label and the estimate in figures", () => {
    expect(draw()).toContain('role="img" aria-label="a label"');
    expect(draw()).toContain(">1.50 times</text>");
  });
});
