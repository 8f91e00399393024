import { makeWindow } from "./window.ts";

/**
 * Every `factor`-th sample after a Hann-windowed sinc low-pass of 12·`factor` + 1 taps with its −6 dB point at 90 %
 * of the new half rate. For analysis of low bands only; recordings themselves are resampled by a library.
 * Sample i of the result stands at sample i·factor of the input.
 */
export function decimate(samples: Float32Array, factor: number): Float32Array {
  if (factor === 1) return samples;
  const half = 6 * factor;
  const taps = makeWindow("hann", 2 * half + 1, "symmetric");
  let sum = 0;
  for (let i = -half; i <= half; i++) {
    const x = (0.9 * i) / factor;
    taps[i + half]! *= i === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
    sum += taps[i + half]!;
  }
  for (let i = 0; i < taps.length; i++) taps[i]! /= sum;
  const out = new Float32Array(Math.ceil(samples.length / factor));
  const padded = new Float64Array(samples.length + 2 * half + factor);
  padded.set(samples, half);
  const middle = taps[half]!;
  for (let o = 0, centre = half; o < out.length; o++, centre += factor) {
    let a = middle * padded[centre]!;
    let b = 0;
    let c = 0;
    for (let i = 1; i <= half; i += 3) {
      a += taps[half + i]! * (padded[centre - i]! + padded[centre + i]!);
      b += taps[half + i + 1]! * (padded[centre - i - 1]! + padded[centre + i + 1]!);
      c += taps[half + i + 2]! * (padded[centre - i - 2]! + padded[centre + i + 2]!);
    }
    out[o] = a + b + c;
  }
  return out;
}
