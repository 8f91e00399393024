import { createRealFft, type RealFft } from "./fft.ts";
import { makeWindow } from "./window.ts";

interface Tools {
  readonly fft: RealFft;
  readonly window: Float64Array;
}
const made = new Map<number, Tools>();

/**
 * Mean power spectrum of `samples[from, to)` over Hann windows of `size` samples (a power of two) with half overlap
 * (Welch 1967, IEEE Trans. Audio 15:70–73): size/2 + 1 values, bin k at k·sampleRate/size. A stretch shorter than one
 * window is padded with zeros. Relative units; null when the stretch is empty.
 */
export function averagePower(
  samples: Float32Array,
  from: number,
  to: number,
  size: number,
): Float64Array | null {
  const first = Math.max(0, Math.round(from));
  const end = Math.min(samples.length, Math.round(to));
  if (end <= first) return null;
  let tools = made.get(size);
  if (!tools) {
    tools = { fft: createRealFft(size), window: makeWindow("hann", size) };
    made.set(size, tools);
  }
  const { fft, window } = tools;
  const out = new Float64Array(size / 2 + 1);
  const hops = Math.max(1, Math.ceil((end - first - size) / (size / 2)) + 1);
  for (let h = 0; h < hops; h++) {
    const start = hops === 1 ? first : Math.round(first + ((end - first - size) * h) / (hops - 1));
    const length = Math.min(size, end - start);
    const taper = length === size ? window : makeWindow("hann", length);
    fft.input.fill(0);
    for (let i = 0; i < length; i++) fft.input[i] = samples[start + i]! * taper[i]!;
    const power = fft.power();
    for (let k = 0; k < out.length; k++) out[k]! += power[k]! / hops;
  }
  return out;
}
