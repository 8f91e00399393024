import { expect, test } from "vitest";
import { highPass } from "../../../src/signals/highPass.ts";
import { resampleFrame } from "../../../src/signals/resampleFrame.ts";

const tone = (hz: number) =>
  Float32Array.from({ length: 16_000 }, (_, i) => Math.sin((2 * Math.PI * hz * i) / 16_000));
const level = (samples: Float32Array) => {
  const inner = samples.subarray(4000, 12_000);
  return Math.sqrt(inner.reduce((sum, x) => sum + x * x, 0) / inner.length) * Math.SQRT2;
};

test("highPass takes constants off, halves its cut-off and leaves what lies two octaves above", () => {
  expect(level(highPass(new Float32Array(16_000).fill(0.7), 16_000, 60))).toBeLessThan(1e-4);
  expect(level(highPass(tone(60), 16_000, 60))).toBeCloseTo(0.5, 2);
  expect(level(highPass(tone(240), 16_000, 60))).toBeCloseTo(1, 2);
  expect(level(highPass(tone(15), 16_000, 60))).toBeLessThan(0.01);
});

test("highPass has zero phase: a pulse stays where it is and is symmetric around it", () => {
  const pulse = new Float32Array(4001);
  pulse[2000] = 1;
  const out = highPass(pulse, 16_000, 60);
  expect(out.indexOf(Math.max(...out))).toBe(2000);
  for (const d of [1, 10, 100]) expect(out[2000 - d]).toBeCloseTo(out[2000 + d]!, 4);
});

test("resampleFrame keeps a tone below the new half rate and takes one above it off", () => {
  const out = new Float64Array(300);
  resampleFrame(tone(1000), 16_000, 8000, 10_000, 300, out);
  for (const [n, x] of out.entries()) {
    const place = 8000 + (n - 149.5) * 1.6;
    expect(Math.abs(x - Math.sin((2 * Math.PI * 1000 * place) / 16_000))).toBeLessThan(0.01);
  }
  resampleFrame(tone(6500), 16_000, 8000, 10_000, 300, out);
  expect(Math.max(...out.map(Math.abs))).toBeLessThan(0.02);
});

test("resampleFrame takes what lies outside the recording for silence", () => {
  const out = new Float64Array(100);
  resampleFrame(tone(500), 16_000, -5000, 10_000, 100, out);
  expect(out.every((x) => x === 0)).toBe(true);
});
