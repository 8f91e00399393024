import { expect, test } from "vitest";
import { addToMoments, createMoments, normalisationFrom, normalise } from "../../../src/signals/normalise.ts";

test("normalise brings each dimension to mean 0 and variance 1 over all recordings added", () => {
  const first = Float32Array.of(1, 10, 2, 20, 3, 60);
  const second = Float32Array.of(6, 10);
  const moments = createMoments(2);
  addToMoments(moments, first);
  addToMoments(moments, second);
  const normalisation = normalisationFrom(moments);
  expect([...normalisation.mean]).toEqual([3, 25]);
  const all: number[] = [];
  for (const part of [first, second]) {
    const out = new Float32Array(part.length);
    normalise(part, normalisation, out);
    all.push(...out);
  }
  for (const d of [0, 1]) {
    const column = all.filter((_, i) => i % 2 === d);
    expect(column.reduce((a, b) => a + b, 0)).toBeCloseTo(0, 5);
    expect(column.reduce((a, b) => a + b * b, 0) / 4).toBeCloseTo(1, 5);
  }
});

test("normalisationFrom leaves a dimension that never varies at scale 1, and nothing as it is", () => {
  const moments = createMoments(1);
  addToMoments(moments, Float32Array.of(7, 7, 7));
  expect(normalisationFrom(moments)).toEqual({ mean: Float64Array.of(7), scale: Float64Array.of(1) });
  expect(normalisationFrom(createMoments(1))).toEqual({
    mean: Float64Array.of(0),
    scale: Float64Array.of(1),
  });
});
