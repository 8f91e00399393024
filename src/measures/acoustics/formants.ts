import type { Vowel } from "../../phonology/phones.ts";
import { createPredictor } from "../../signals/linearPrediction.ts";
import { quantile } from "../../signals/quantile.ts";
import { resampleFrame } from "../../signals/resampleFrame.ts";
import { type Resonance, resonances } from "../../signals/resonances.ts";
import { chooseFormants } from "./chooseFormants.ts";
import { sampleRateHz } from "./voicingFrames.ts";

export type FormantReason = "too-short" | "devoiced" | "no-signal" | "unsteady" | "broad" | "voice-too-high";

/** Formants of one vowel in Hz; null where unreliable, with the reason. */
export interface Formants {
  readonly f1Hz: number | null;
  readonly f2Hz: number | null;
  readonly f3Hz: number | null;
  readonly reason: FormantReason | null;
}

/** Order of the prediction: five resonances below the ceiling and two poles for the voice source's slope. */
export const predictionOrder = 12;
const frameMs = 28;
/** Pre-emphasis from here: the source falls 12 dB an octave, radiation gives 6 back. */
const emphasisHz = 50;
const lowestHz = 150;
/** A resonance broader than this is the source's slope or noise. */
const broadestHz = 1000;
/** Frames must lie within this share of their median, in the middle half of them, or the formant moves or jumps. */
const steadyShare = 0.12;
/** Above this F0 the harmonics lie too far apart to place F1. */
const highestF0Hz = 350;
const none = (reason: FormantReason): Formants => ({ f1Hz: null, f2Hz: null, f3Hz: null, reason });

const predictors = new Map<number, { fit: ReturnType<typeof createPredictor>; frame: Float64Array }>();

/**
 * Resonances in one frame of 28 ms around `centre` (samples at 16 kHz) below `ceilingHz`, candidates for formants:
 * 150 Hz to 50 Hz below the ceiling and at most 1000 Hz broad; ascending. Null when nothing can be predicted.
 */
export function formantCandidates(
  samples: Float32Array,
  centre: number,
  ceilingHz: number,
): Resonance[] | null {
  const rate = 2 * ceilingHz;
  const count = Math.round((frameMs * rate) / 1000);
  let tools = predictors.get(ceilingHz);
  if (!tools) {
    tools = { fit: createPredictor(predictionOrder, count), frame: new Float64Array(count) };
    predictors.set(ceilingHz, tools);
  }
  const { fit, frame } = tools;
  resampleFrame(samples, sampleRateHz, centre, rate, count, frame);
  const keep = Math.exp((-2 * Math.PI * emphasisHz) / rate);
  for (let i = count - 1; i > 0; i--) frame[i]! -= keep * frame[i - 1]!;
  frame[0]! *= 1 - keep;
  if (!fit.fit(frame, count)) return null;
  const found = resonances(fit.coefficients, rate);
  return found?.filter((r) => r.hz > lowestHz && r.hz < ceilingHz - 50 && r.bandwidthHz < broadestHz) ?? null;
}

/**
 * F1–F3 of a vowel: medians over `frames` places in its middle (35–65 % of `[startMs, endMs]`), each kept only if half
 * of the frames agree within 12 %. F1 is left out for a voice above 350 Hz.
 */
export function measureFormants(
  samples: Float32Array,
  startMs: number,
  endMs: number,
  ceilingHz: number,
  f0Hz: number | null,
  vowel: Vowel | null = null,
  frames = 3,
): Formants {
  if (endMs - startMs < 25) return none("too-short");
  const tracks: number[][] = [[], [], []];
  let usable = 0;
  for (let k = 0; k < frames; k++) {
    const atMs = startMs + (endMs - startMs) * (0.35 + (0.3 * (k + 0.5)) / frames);
    const found = formantCandidates(samples, (atMs * sampleRateHz) / 1000, ceilingHz);
    if (found === null) continue;
    usable++;
    const picked = chooseFormants(found, vowel);
    for (let f = 0; f < 3; f++) if (!Number.isNaN(picked[f]!)) tracks[f]!.push(picked[f]!);
  }
  if (usable < frames / 2) return none("no-signal");
  const values = tracks.map((track) => steadyMedian(track, usable));
  const high = f0Hz !== null && f0Hz > highestF0Hz;
  const reason: FormantReason | null = high
    ? "voice-too-high"
    : values.every((value) => value !== null)
      ? null
      : tracks.some((track) => track.length < usable / 2)
        ? "broad"
        : "unsteady";
  return { f1Hz: high ? null : values[0]!, f2Hz: values[1]!, f3Hz: values[2]!, reason };
}

function steadyMedian(track: readonly number[], usable: number): number | null {
  if (track.length < Math.max(1, usable / 2)) return null;
  const median = quantile(track, 0.5);
  const near = track.filter((hz) => Math.abs(hz / median - 1) <= steadyShare).length;
  return near >= usable / 2 ? median : null;
}
