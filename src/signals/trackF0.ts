import { type Correlator, createCorrelator } from "./crossCorrelation.ts";
import { decimate } from "./decimate.ts";
import { highPass } from "./highPass.ts";
import { createProducts } from "./kernel/products.ts";

export interface F0Options {
  readonly sampleRateHz: number;
  /** Step between frames in ms. */
  readonly hopMs: number;
  /** Search range; 60–600 Hz covers men to children. */
  readonly minHz: number;
  readonly maxHz: number;
}

/** One value a frame; frame t is centred at (t + ½)·hop. */
export interface F0Track {
  /** Best normalised cross-correlation below about 1.8 kHz, 0 … 1: near 1 for voice, about .4 for noise. */
  readonly periodicity: Float32Array;
  /** Frequency of that peak in Hz; NaN where nothing correlates above .3. Not a voicing decision. */
  readonly f0Hz: Float32Array;
}

/** Frames this far below the loudest are not searched: nothing audible is periodic there. */
const silenceDb = 70;
/** Correlation given up for each octave downwards: half of it is what a peak at twice the period must gain to win. */
const octaveCost = 0.04;
/** Below this correlation the frame is hardly voiced and its lag is left at the 4 kHz grid's parabola. */
const refineFrom = 0.5;
const windowMs = 20;
const lowRateHz = 4000;

/**
 * Periodicity and F0 in the lag domain. A copy at 4 kHz, free of rumble below 60 Hz, is searched over all lags with a
 * 20 ms window (long enough for one period of 50 Hz, short enough for a 30 ms vowel); of the peaks the best wins after
 * a small charge an octave; then the lag is refined on the full-rate signal with a parabola through three lags.
 */
export function trackF0(samples: Float32Array, options: F0Options): F0Track {
  return trackF0WithoutRumble(highPass(samples, options.sampleRateHz, options.minHz), options);
}

/** The same for a recording whose rumble is already taken off. */
export function trackF0WithoutRumble(clean: Float32Array, options: F0Options): F0Track {
  const { sampleRateHz, hopMs, minHz, maxHz } = options;
  const factor = Math.max(1, Math.floor(sampleRateHz / lowRateHz));
  const low = decimate(clean, factor);
  const lowRate = sampleRateHz / factor;
  const hop = (hopMs * sampleRateHz) / 1000;
  const frames = Math.max(0, Math.floor(clean.length / hop));
  const periodicity = new Float32Array(frames);
  const f0Hz = new Float32Array(frames).fill(Number.NaN);
  const { correlator, refine } = toolsFor(lowRate, options);
  const { correlation, lagMin } = correlator;
  const energyFloor = loudest(low, lowRate) * 10 ** (-silenceDb / 10);
  if (!(energyFloor > 0)) return { periodicity, f0Hz };
  const half = Math.round((windowMs * lowRate) / 2000);
  for (let t = 0; t < frames; t++) {
    const centre = (t + 0.5) * hop;
    if (energyAround(low, Math.round(centre / factor), half) < energyFloor) continue;
    correlator.measure(low, centre / factor, energyFloor);
    let best = 0;
    let bestScore = 0;
    let bestLag = 0;
    for (let i = 1; i < correlation.length - 1; i++) {
      const here = correlation[i]!;
      if (here < 0.3 || here < correlation[i - 1]! || here <= correlation[i + 1]!) continue;
      const bend = correlation[i - 1]! - 2 * here + correlation[i + 1]!;
      const shift = bend < 0 ? (0.5 * (correlation[i - 1]! - correlation[i + 1]!)) / bend : 0;
      const height = here - 0.25 * (correlation[i - 1]! - correlation[i + 1]!) * shift;
      const lag = i + lagMin + shift;
      const score = height - octaveCost * Math.log2((lag * maxHz) / lowRate);
      if (bestLag !== 0 && score <= bestScore) continue;
      bestScore = score;
      best = height;
      bestLag = lag;
    }
    if (bestLag === 0) {
      let highest = 0;
      for (let i = 0; i < correlation.length; i++) highest = Math.max(highest, correlation[i]!);
      periodicity[t] = Math.min(0.3, highest);
      continue;
    }
    periodicity[t] = Math.min(1, best);
    if (best < refineFrom) {
      f0Hz[t] = lowRate / bestLag;
      continue;
    }
    const hz = sampleRateHz / refine(clean, centre, bestLag * factor);
    if (hz >= minHz && hz <= maxHz) f0Hz[t] = hz;
  }
  return { periodicity, f0Hz };
}

interface Tools {
  readonly correlator: Correlator;
  readonly refine: ReturnType<typeof createRefiner>;
}
const made = new Map<string, Tools>();

/** Made once: every recording of a run is searched alike. */
function toolsFor(lowRate: number, { sampleRateHz, minHz, maxHz }: F0Options): Tools {
  const key = `${sampleRateHz}/${minHz}/${maxHz}`;
  let tools = made.get(key);
  if (!tools) {
    tools = {
      correlator: createCorrelator({ sampleRateHz: lowRate, windowMs, minHz, maxHz }),
      refine: createRefiner(sampleRateHz),
    };
    made.set(key, tools);
  }
  return tools;
}

/** Energy of the loudest 20 ms. */
function loudest(samples: Float32Array, rateHz: number): number {
  const half = Math.round((windowMs * rateHz) / 2000);
  let most = 0;
  for (let centre = half; centre < samples.length + half; centre += half) {
    most = Math.max(most, energyAround(samples, centre, half));
  }
  return most;
}

function energyAround(samples: Float32Array, centre: number, half: number): number {
  let sum = 0;
  const end = Math.min(samples.length, centre + half);
  for (let i = Math.max(0, centre - half); i < end; i++) sum += samples[i]! * samples[i]!;
  return sum;
}

/** Lag, in samples and fractions, of the correlation's peak within ±2 samples of a first guess. */
function createRefiner(sampleRateHz: number): (samples: Float32Array, centre: number, lag: number) => number {
  const width = Math.round((windowMs * sampleRateHz) / 1000);
  const reach = 2;
  const values = new Float64Array(2 * reach + 1);
  const stretch = width + 2 * reach;
  const dotsAt = width + stretch;
  const products = createProducts(dotsAt + 2 * values.length);
  const { numbers } = products;

  return (samples, centre, lag) => {
    const guess = Math.round(lag);
    const first = Math.round(centre - (width + guess) / 2);
    if (first < 0 || first + guess + reach + width > samples.length) return lag;
    const second = first + guess - reach;
    for (let i = 0; i < width; i++) numbers[i] = samples[first + i]!;
    for (let i = 0; i < stretch; i++) numbers[width + i] = samples[second + i]!;
    products.slidingDots(0, width, width, values.length, dotsAt);
    let best = 0;
    for (let k = 0; k < values.length; k++) {
      const energy = numbers[dotsAt + 2 * k + 1]!;
      values[k] = energy > 0 ? numbers[dotsAt + 2 * k]! / Math.sqrt(energy) : 0;
      if (values[k]! > values[best]!) best = k;
    }
    if (best === 0 || best === values.length - 1) return lag;
    const left = values[best - 1]!;
    const right = values[best + 1]!;
    const bend = left - 2 * values[best]! + right;
    return guess + best - reach + (bend < 0 ? (0.5 * (left - right)) / bend : 0);
  };
}
