import { expect, test } from "vitest";
import { depthOf, placeOf, regionOf } from "../../../../src/findings/rules/region.ts";

const interval = (low: number, high: number) => ({ low, high });

test("placeOf decides by the whole interval", () => {
  const region = regionOf({ when: "between", from: 2, to: 3 }, "ratio");
  expect(placeOf(interval(2.1, 2.9), region)).toBe("holds");
  expect(placeOf(interval(2, 3), region)).toBe("holds");
  expect(placeOf(interval(1.9, 2.9), region)).toBe("open");
  expect(placeOf(interval(1, 4), region)).toBe("open");
  expect(placeOf(interval(1, 1.9), region)).toBe("fails");
  expect(placeOf(interval(3.1, 4), region)).toBe("fails");
});

test("placeOf leaves a value on the limit of a direction undecided or failed, never borne out", () => {
  const region = regionOf({ when: "more-than", value: 0 }, "difference");
  expect(placeOf(interval(0, 0.2), region)).toBe("open");
  expect(placeOf(interval(-0.1, 0), region)).toBe("fails");
  expect(placeOf(interval(0.01, 1), region)).toBe("holds");
});

test("an interval open upwards can bear out 'more than', contradict 'less than', and nothing else", () => {
  const open = interval(2.2, Number.POSITIVE_INFINITY);
  const place = (holds: Parameters<typeof regionOf>[0]) => placeOf(open, regionOf(holds, "ratio"));
  expect(place({ when: "more-than", value: 2 })).toBe("holds");
  expect(place({ when: "more-than", value: 2.5 })).toBe("open");
  expect(place({ when: "less-than", value: 2.5 })).toBe("open");
  expect(place({ when: "less-than", value: 2 })).toBe("fails");
  expect(place({ when: "between", from: 2, to: 3 })).toBe("open");
  expect(place({ when: "between", from: 1, to: 2 })).toBe("fails");
});

test("placeOf calls an effect too small only when the interval excludes any that would matter", () => {
  const more = regionOf({ when: "more-than", value: 0, negligible: 0.05 }, "difference");
  expect(placeOf(interval(0.01, 0.04), more)).toBe("small");
  expect(placeOf(interval(-0.04, 0.04), more)).toBe("small");
  expect(placeOf(interval(0.01, 0.06), more)).toBe("holds");
  expect(placeOf(interval(-0.04, 0.06), more)).toBe("open");
  expect(placeOf(interval(-0.2, -0.1), more)).toBe("fails");
  const less = regionOf({ when: "less-than", value: 1, negligible: 0.1 }, "ratio");
  expect(placeOf(interval(0.95, 0.99), less)).toBe("small");
  expect(placeOf(interval(0.8, 0.9), less)).toBe("holds");
});

test("regionOf takes 'about' as a factor for ratios and as points for shares", () => {
  expect(regionOf({ when: "about", value: 2, margin: 0.25 }, "ratio")).toMatchObject({ low: 1.6, high: 2.5 });
  expect(regionOf({ when: "about", value: 0.5, margin: 0.25 }, "share")).toMatchObject({
    low: 0.25,
    high: 0.75,
  });
});

test("depthOf is how far inside the nearer edge lies, and never NaN for open intervals", () => {
  const region = regionOf({ when: "more-than", value: 1 }, "ratio");
  expect(depthOf(interval(2, Number.POSITIVE_INFINITY), region, "ratio")).toBeCloseTo(Math.log(2), 12);
  expect(depthOf(interval(0, 0.5), region, "ratio")).toBe(Number.NEGATIVE_INFINITY);
  const range = regionOf({ when: "between", from: 0.2, to: 0.8 }, "share");
  expect(depthOf(interval(0.3, 0.75), range, "share")).toBeCloseTo(0.05, 12);
});
