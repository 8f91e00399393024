import { createRealFft } from "./fft.ts";
import { makeWindow } from "./window.ts";

export interface Band {
  readonly fromHz: number;
  readonly toHz: number;
}

export interface BandOptions {
  readonly sampleRateHz: number;
  readonly hopMs: number;
  /** Length of the Hann window; its effective width is about half. */
  readonly windowMs: number;
  readonly bands: readonly Band[];
}

/** Lowest level given, in dB below full scale; digital silence stands here. */
export const floorDb = -120;

/**
 * Level of each band in dB re a full-scale square wave (a full-scale sine stands at −3.01), one Float32Array a band,
 * one value a frame; frame t is centred at (t + ½)·hop. Bins are shared out whole. Samples outside the signal are 0.
 */
export function bandLevels(samples: Float32Array, options: BandOptions): Float32Array[] {
  const { sampleRateHz, hopMs, windowMs, bands } = options;
  const width = Math.round((windowMs * sampleRateHz) / 1000);
  let size = 4;
  while (size < width) size *= 2;
  const fft = createRealFft(size);
  const window = makeWindow("hann", width);
  let windowEnergy = 0;
  for (let i = 0; i < width; i++) windowEnergy += window[i]! * window[i]!;
  const hop = (hopMs * sampleRateHz) / 1000;
  const frames = Math.max(0, Math.floor(samples.length / hop));
  const out = bands.map(() => new Float32Array(frames));
  const edges = bands.map(({ fromHz, toHz }) => [
    Math.max(1, Math.ceil((fromHz * size) / sampleRateHz)),
    Math.min(size / 2, Math.ceil((toHz * size) / sampleRateHz)),
  ]);
  const scale = 2 / (size * windowEnergy);
  const { input } = fft;
  input.fill(0);
  for (let t = 0; t < frames; t++) {
    const first = Math.round((t + 0.5) * hop - width / 2);
    if (first >= 0 && first + width <= samples.length) {
      for (let i = 0; i < width; i++) input[i] = samples[first + i]! * window[i]!;
    } else {
      for (let i = 0; i < width; i++) input[i] = (samples[first + i] ?? 0) * window[i]!;
    }
    const power = fft.power();
    for (let b = 0; b < bands.length; b++) {
      const [from, to] = edges[b] as [number, number];
      let sum = 0;
      for (let k = from; k < to; k++) sum += power[k]!;
      out[b]![t] = sum > 0 ? Math.max(floorDb, 10 * Math.log10(sum * scale)) : floorDb;
    }
  }
  return out;
}
