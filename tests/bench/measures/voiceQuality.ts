import { randomFor } from "../../../data/demo/make/random.ts";
import { trackF0 } from "../../../src/signals/trackF0.ts";
import type { Spoil } from "./spoil.ts";

const rateHz = 16_000;
const hop = 80;
const width = 400;
const order = 18;

/** The glottal source of one voiced stretch: fills `out[from, to)`; `f0At` and `rmsAt` give Hz and level at a sample. */
type Source = (
  out: Float64Array,
  from: number,
  to: number,
  f0At: (i: number) => number,
  rmsAt: (i: number) => number,
) => void;

/**
 * The same words in another voice quality: linear prediction takes off the vocal tract, what is left is replaced where
 * the recording is voiced, and the tract is put on again. Voiceless sounds stay as they are, and so does what is known
 * of the voicing. `onlyEndsMs`: only so much of the voice before each silence of 150 ms.
 */
function withSource(source: Source, onlyEndsMs: number | null): Spoil {
  return (samples) => {
    const { periodicity, f0Hz } = trackF0(samples, { sampleRateHz: rateHz, hopMs: 5, minHz: 60, maxHz: 600 });
    const frames = periodicity.length;
    const filters = Array.from({ length: frames }, (_, t) => tract(samples, t * hop + hop / 2));
    const residual = new Float64Array(frames * hop);
    for (let i = 0; i < residual.length; i++) {
      const filter = filters[Math.floor(i / hop)]!;
      let sum = samples[i]!;
      for (let k = 1; k <= order && i - k >= 0; k++) sum += filter[k]! * samples[i - k]!;
      residual[i] = sum;
    }
    const rms = Float64Array.from({ length: frames }, (_, t) => {
      let squares = 0;
      for (let i = t * hop; i < (t + 1) * hop; i++) squares += residual[i]! ** 2;
      return Math.sqrt(squares / hop);
    });
    const voiced = Array.from(periodicity, (r, t) => r > 0.7 && f0Hz[t]! > 0);
    const chosen = onlyEndsMs === null ? voiced : phraseEnds(voiced, onlyEndsMs / 5);
    const at = (values: ArrayLike<number>) => (i: number) =>
      values[Math.min(frames - 1, Math.floor(i / hop))]!;
    const changed = residual.slice();
    for (let t = 0; t < frames; t++) {
      if (!chosen[t]) continue;
      const first = t;
      while (t < frames && chosen[t]) t++;
      source(changed, first * hop, t * hop, at(f0Hz), at(rms));
    }
    const out = new Float64Array(samples.length);
    for (let i = 0; i < changed.length; i++) {
      const filter = filters[Math.floor(i / hop)]!;
      let sum = changed[i]!;
      for (let k = 1; k <= order && i - k >= 0; k++) sum -= filter[k]! * out[i - k]!;
      out[i] = sum;
    }
    const peak = out.reduce((most, x) => Math.max(most, Math.abs(x)), 1e-9);
    return Float32Array.from(out, (x) => x * Math.min(1, 0.9 / peak));
  };
}

/** Predictor by autocorrelation (Levinson–Durbin), with a ridge of −50 dB; coefficient 0 is 1. */
function tract(samples: Float32Array, centre: number): Float64Array {
  const lags = new Float64Array(order + 1);
  const frame = Float64Array.from(
    { length: width },
    (_, i) =>
      (samples[centre - width / 2 + i] ?? 0) * (0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / width)),
  );
  for (let k = 0; k <= order; k++) for (let i = k; i < width; i++) lags[k]! += frame[i]! * frame[i - k]!;
  let error = lags[0]! * 1.00001 + 1e-9;
  const a = new Float64Array(order + 1);
  a[0] = 1;
  for (let m = 1; m <= order; m++) {
    let sum = lags[m]!;
    for (let k = 1; k < m; k++) sum += a[k]! * lags[m - k]!;
    const reflection = -sum / error;
    const before = a.slice();
    for (let k = 1; k < m; k++) a[k] = before[k]! + reflection * before[m - k]!;
    a[m] = reflection;
    error *= 1 - reflection * reflection;
  }
  return a;
}

function phraseEnds(voiced: readonly boolean[], reach: number): boolean[] {
  const out = voiced.map(() => false);
  for (let t = 0; t < voiced.length; t++) {
    if (!voiced[t] || voiced.slice(t + 1, t + 31).some(Boolean)) continue;
    for (let k = Math.max(0, t - reach); k <= t; k++) out[k] = voiced[k]!;
  }
  return out;
}

/**
 * Soft pulses without a sharp closure (all but the lowest harmonics fall away) and breath noise of which half swells with
 * each period. `noiseShare` of the source's power is noise.
 */
export const breathy = (noiseShare: number): Spoil => {
  const random = randomFor(`breathy ${noiseShare}`);
  return withSource((out, from, to, f0At, rmsAt) => {
    let phase = 0;
    for (let i = from; i < to; i++) {
      phase += f0At(i) / rateHz;
      const angle = 2 * Math.PI * phase;
      // First three harmonics falling by 10 dB each: open quotient near 1 (from memory, no published source).
      const pulses = Math.cos(angle) + 0.316 * Math.cos(2 * angle) + 0.1 * Math.cos(3 * angle);
      const noise = random.normal() * (1 + 0.7 * Math.cos(angle));
      const gain = rmsAt(i);
      out[i] = gain * (Math.sqrt((1 - noiseShare) / 0.555) * pulses + Math.sqrt(noiseShare / 1.245) * noise);
    }
  }, null);
};

/** Single pulses 14 to 25 ms apart (40 to 70 Hz), irregular in time and by ±3 dB in level, 8 dB weaker than before. */
export const creaky = (onlyEndsMs: number | null): Spoil => {
  const random = randomFor(`creaky ${onlyEndsMs}`);
  return withSource((out, from, to, _, rmsAt) => {
    out.fill(0, from, to);
    let last = from - 0.01 * rateHz;
    for (let i = from + Math.round(random.uniform() * 0.008 * rateHz); i < to; ) {
      const gain =
        0.4 * rmsAt(i) * Math.sqrt(Math.min(0.025 * rateHz, i - last)) * 10 ** (0.15 * random.normal());
      out[i] = gain;
      last = i;
      i += Math.round((0.014 + 0.011 * random.uniform()) * rateHz);
    }
    for (let i = from; i < to; i++) out[i]! += 0.05 * rmsAt(i) * random.normal();
  }, onlyEndsMs);
};
