import { describe, expect, test } from "vitest";
import { intervalSvg, ratioScale, shareScale } from "../../../src/publish/intervalSvg.ts";

describe("intervalSvg", () => {
  const mark = { name: "i", estimate: 0.5, low: 0.25, high: 1, atLeast: false };
  test("places estimate and bounds on the scale in proportion", () => {
    const svg = intervalSvg([mark], shareScale, "half").markup;
    const whisker = /class="whisker" x1="([\d.]+)" x2="([\d.]+)"/.exec(svg)!;
    const centre = Number(/cx="([\d.]+)"/.exec(svg)![1]);
    const [low, high] = [Number(whisker[1]), Number(whisker[2])];
    expect((centre - low) / (high - low)).toBeCloseTo(1 / 3, 2);
  });

  test("is an image whose text alternative says the finding, and writes bounds as ≥", () => {
    const svg = intervalSvg(
      [{ ...mark, estimate: 2.4, low: 2, high: 3, atLeast: true }],
      ratioScale([{ ...mark, high: 3 }]),
      "finding",
    ).markup;
    expect(svg).toContain('role="img" aria-label="finding"');
    expect(svg).toContain("≥ 2.40×");
  });
});
