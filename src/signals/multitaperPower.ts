import { createRealFft, type RealFft } from "./fft.ts";

const made = new Map<number, RealFft>();

/**
 * Mean power spectrum of `samples[from, to)` over the first `tapers` sine tapers (Riedel & Sidorenko 1995, IEEE Trans.
 * Signal Process. 43:188–195), zero-padded to `size` samples (a power of two, at least the stretch's length): size/2 + 1
 * values, bin k at k·sampleRate/size. Unlike one window, several weigh all of a short stretch nearly alike, so that
 * little of what it tells is lost. Relative units; null when the stretch is empty. Throws RangeError when it is longer
 * than `size`.
 */
export function multitaperPower(
  samples: Float32Array,
  from: number,
  to: number,
  tapers: number,
  size: number,
): Float64Array | null {
  const first = Math.max(0, Math.round(from));
  const length = Math.min(samples.length, Math.round(to)) - first;
  if (length <= 0) return null;
  if (length > size) throw new RangeError(`${length} samples do not fit into a spectrum of ${size}`);
  let fft = made.get(size);
  if (!fft) {
    fft = createRealFft(size);
    made.set(size, fft);
  }
  const out = new Float64Array(size / 2 + 1);
  for (let taper = 1; taper <= tapers; taper++) {
    fft.input.fill(0);
    for (let i = 0; i < length; i++)
      fft.input[i] = samples[first + i]! * Math.sin((Math.PI * taper * (i + 0.5)) / length);
    const power = fft.power();
    for (let k = 0; k < out.length; k++) out[k]! += power[k]! / tapers;
  }
  return out;
}

/**
 * How much the tapers widen a spectrum: variance in Hz² that they add to its second central moment, for a stretch of
 * `durationSec`. Closed form: ∫w′² ∕ (4π²∫w²) of taper k is k² ∕ 4T², here averaged over the tapers.
 */
export function taperVarianceHz2(tapers: number, durationSec: number): number {
  return ((tapers + 1) * (2 * tapers + 1)) / 24 / durationSec ** 2;
}
