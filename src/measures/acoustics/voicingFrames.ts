import { bandLevels } from "../../signals/bandLevels.ts";
import { highPass } from "../../signals/highPass.ts";
import { trackF0WithoutRumble } from "../../signals/trackF0.ts";
import { withoutHum } from "../../signals/withoutHum.ts";

/** Sample rate every acoustic measure works at. */
export const sampleRateHz = 16_000;
/** Step between frames. 5 ms: an island of 20 ms holds four frames. */
export const hopMs = 5;
/** Range in which F0 is searched; what a child's shout exceeds is reported as out of range, not guessed. */
export const f0RangeHz = { min: 60, max: 600 } as const;
/** Fundamental and first formant of /i, u/; above the mains' 50 Hz and rumble. */
export const lowBandHz = { fromHz: 90, toHz: 600 } as const;
/** Second and third formant: a hum in a closure has nothing here, a vowel has. */
export const midBandHz = { fromHz: 600, toHz: 3000 } as const;
/** Frication; a telephone keeps only its lowest part. */
export const highBandHz = { fromHz: 3000, toHz: 8000 } as const;

/** What the voicing decisions see of a recording: one value a frame of 5 ms, frame t centred at (t + ½)·5 ms. */
export interface VoicingFrames {
  readonly frames: number;
  /** Best normalised cross-correlation below 1.8 kHz, 0 … 1. */
  readonly periodicity: Float32Array;
  /** Hz; NaN where nothing correlates. */
  readonly f0Hz: Float32Array;
  /** How steady that frequency is: share of the two frames on either side within 8 % of it, 0 … 1. */
  readonly steadiness: Float32Array;
  /** dB re full scale in the three bands; −120 in digital silence. */
  readonly lowDb: Float32Array;
  readonly midDb: Float32Array;
  readonly highDb: Float32Array;
  /** Whether mains hum was found and taken off; unknown where it does not say. */
  readonly hum?: boolean;
}

/** Analyses a whole recording (mono, 16 kHz, ±1), without its mains hum. Values that are not finite count as 0. */
export function analyseVoicing(samples: Float32Array): VoicingFrames {
  const finite = onlyFinite(samples);
  const humless = withoutHum(finite, sampleRateHz);
  const clean = highPass(humless, sampleRateHz, f0RangeHz.min);
  const { periodicity, f0Hz } = trackF0WithoutRumble(clean, {
    sampleRateHz,
    hopMs,
    minHz: f0RangeHz.min,
    maxHz: f0RangeHz.max,
  });
  const [lowDb, midDb, highDb] = bandLevels(clean, {
    sampleRateHz,
    hopMs,
    windowMs: 25,
    bands: [lowBandHz, midBandHz, highBandHz],
  });
  const steadiness = f0Steadiness(f0Hz);
  return {
    frames: periodicity.length,
    periodicity,
    f0Hz,
    steadiness,
    lowDb: lowDb!,
    midDb: midDb!,
    highDb: highDb!,
    hum: humless !== finite,
  };
}

/** Voice keeps its pitch over 25 ms; a chance peak of noise does not. */
function f0Steadiness(f0Hz: Float32Array): Float32Array {
  const out = new Float32Array(f0Hz.length);
  for (let t = 0; t < f0Hz.length; t++) {
    let near = 0;
    for (let d = -2; d <= 2; d++) {
      if (d !== 0 && Math.abs(f0Hz[t + d]! / f0Hz[t]! - 1) < 0.08) near++;
    }
    out[t] = near / 4;
  }
  return out;
}

/** The same array when all is finite, else a copy with zeros in the place of what is not. */
export function onlyFinite(samples: Float32Array): Float32Array {
  for (let i = 0; i < samples.length; i++) {
    if (!Number.isFinite(samples[i]!)) return samples.map((x) => (Number.isFinite(x) ? x : 0));
  }
  return samples;
}
