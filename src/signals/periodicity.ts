import { createRealFft } from "./fft.ts";
import { makeWindow } from "./window.ts";

export interface PeriodicityOptions {
  readonly sampleRateHz: number;
  /** Frame length in ms. It should hold at least two periods of `minHz`; 40 suits 60 Hz and up. */
  readonly windowMs: number;
  readonly minHz: number;
  readonly maxHz: number;
}

/** Result of one frame, reused from call to call. */
export interface Periodicity {
  /** Highest normalised autocorrelation between the lags of maxHz and minHz, 0 … 1. A pure tone gives about 1. */
  strength: number;
  /** Frequency of that peak in Hz; 0 when there is none. */
  hz: number;
}

export interface PeriodicityMeter {
  readonly windowSamples: number;
  /** Measures the frame whose first sample is `start`; samples outside the signal count as 0. */
  measure(samples: Float32Array, start: number): Periodicity;
}

/**
 * Autocorrelation of the Hann-windowed frame divided by the window's own (Boersma P. 1993, Proc. Inst. Phonetic
 * Sciences 17:97–110), which undoes the window's taper, so that a periodic frame gives 1 at its period.
 * The mean is taken off first. Of peaks within 8 % of the best the shortest lag wins, against octave-down errors.
 * A frame of silence (all samples equal) gives strength 0.
 */
export function createPeriodicityMeter(options: PeriodicityOptions): PeriodicityMeter {
  const { sampleRateHz, windowMs, minHz, maxHz } = options;
  const windowSamples = Math.round((windowMs * sampleRateHz) / 1000);
  const lagMin = Math.max(1, Math.floor(sampleRateHz / maxHz));
  const lagMax = Math.min(windowSamples - 2, Math.ceil(sampleRateHz / minHz));
  if (lagMax <= lagMin)
    throw new RangeError(`a window of ${windowMs} ms holds no lag between ${minHz} and ${maxHz} Hz`);
  let size = 4;
  while (size < windowSamples + lagMax + 2) size *= 2;
  const fft = createRealFft(size);
  const window = makeWindow("hann", windowSamples, "symmetric");
  fft.input.fill(0);
  fft.input.set(window);
  const own = Float64Array.from(fft.autocorrelation());
  for (let lag = 1; lag < own.length; lag++) own[lag] = own[lag]! / own[0]!;
  own[0] = 1;
  const normalised = new Float64Array(lagMax + 2);
  const result: Periodicity = { strength: 0, hz: 0 };

  function load(samples: Float32Array, start: number): void {
    let sum = 0;
    const from = Math.max(0, -start);
    const to = Math.min(windowSamples, samples.length - start);
    for (let i = from; i < to; i++) sum += samples[start + i]!;
    const mean = to > from ? sum / (to - from) : 0;
    fft.input.fill(0);
    for (let i = from; i < to; i++) fft.input[i] = (samples[start + i]! - mean) * window[i]!;
  }

  /** Height and place of the parabola through a peak and its neighbours; the place is in `vertex`. */
  let vertex = 0;
  function peakHeight(lag: number): number {
    const left = normalised[lag - 1]!;
    const middle = normalised[lag]!;
    const right = normalised[lag + 1]!;
    const bend = left - 2 * middle + right;
    const shift = bend < 0 ? (0.5 * (left - right)) / bend : 0;
    vertex = lag + shift;
    return middle - 0.25 * (left - right) * shift;
  }

  function measure(samples: Float32Array, start: number): Periodicity {
    result.strength = 0;
    result.hz = 0;
    load(samples, start);
    const lags = fft.autocorrelation();
    const energy = lags[0]!;
    if (!(energy > 1e-12)) return result;
    for (let lag = lagMin - 1; lag <= lagMax + 1; lag++) normalised[lag] = lags[lag]! / (energy * own[lag]!);
    let best = 0;
    for (let lag = lagMin; lag <= lagMax; lag++) {
      const here = normalised[lag]!;
      if (here <= 0 || here < normalised[lag - 1]! || here < normalised[lag + 1]!) continue;
      const height = peakHeight(lag);
      if (height <= best * 1.08) continue;
      best = height;
      result.hz = sampleRateHz / vertex;
    }
    result.strength = Math.min(1, best);
    return result;
  }
  return { windowSamples, measure };
}
