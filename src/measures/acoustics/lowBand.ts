import { decimate } from "../../signals/decimate.ts";
import { createRealFft } from "../../signals/fft.ts";
import { makeWindow } from "../../signals/window.ts";
import { isVoicelessClass, type MeasuredPhone, soundClass } from "./measuredPhone.ts";
import { hopMs, sampleRateHz, type VoicingFrames } from "./voicingFrames.ts";

const factor = 4;
const lowRateHz = sampleRateHz / factor;
const windowSamples = 128;
const size = 256;
/** Width of a spectrum's bin, Hz. */
export const lowBinHz = lowRateHz / size;
/** Bins of a spectrum, from 0 to about 1200 Hz. */
export const lowBins = Math.ceil(1200 / lowBinHz);

const fft = createRealFft(size);
const window = makeWindow("hann", windowSamples);

/** What the search for faint voice sees of a recording. */
export interface LowBand {
  /** Power spectrum, 0 to 1200 Hz, of the 32 ms about frame `t` (5 ms a frame), written into `out`. */
  spectrum(t: number, out: Float64Array): void;
  /** The same of the recording's background. Nowhere more than 42 dB below a tone as strong as the voice. */
  readonly background: Float64Array;
}

/** Quietest share of the frames without voice from which the background is taken, and how many frames at most. */
const quietShare = 0.25;
const mostFrames = 120;
/** Background is smoothed over this many bins on either side: 80 Hz in all. */
const smoothBins = 2;
const floorBelowVoiceDb = 42;

/** Of a recording (mono, 16 kHz, finite values) whose level of voice is `voiceDb`. */
export function lowBandOf(
  samples: Float32Array,
  frames: VoicingFrames,
  phones: readonly MeasuredPhone[],
  voiceDb: number,
): LowBand {
  const low = decimate(samples, factor);
  const hop = (hopMs * lowRateHz) / 1000;

  function spectrum(t: number, out: Float64Array): void {
    const first = Math.round((t + 0.5) * hop) - windowSamples / 2;
    fft.input.fill(0);
    for (let i = Math.max(0, -first); i < windowSamples && first + i < low.length; i++)
      fft.input[i] = low[first + i]! * window[i]!;
    const power = fft.power();
    for (let k = 0; k < out.length; k++) out[k] = power[k]!;
  }

  const background = new Float64Array(lowBins);
  const quiet = quietFrames(frames, phones);
  const one = new Float64Array(lowBins);
  for (const t of quiet) {
    spectrum(t, one);
    for (let k = 0; k < lowBins; k++) background[k]! += one[k]! / quiet.length;
  }
  const toneAtVoice = (10 ** (voiceDb / 10) * windowSamples ** 2) / 8;
  const floor = toneAtVoice * 10 ** (-floorBelowVoiceDb / 10);
  return { spectrum, background: smoothed(background, smoothBins).map((x) => Math.max(x, floor)) };
}

function quietFrames(frames: VoicingFrames, phones: readonly MeasuredPhone[]): readonly number[] {
  const places: number[] = [];
  for (const { phone, startMs, endMs } of phones) {
    const kind = soundClass(phone);
    if (kind !== "pause" && !isVoicelessClass(kind)) continue;
    const end = Math.min(frames.frames, Math.round(endMs / hopMs));
    for (let t = Math.max(0, Math.round(startMs / hopMs)); t < end; t += 2) places.push(t);
  }
  places.sort((a, b) => frames.lowDb[a]! - frames.lowDb[b]! || a - b);
  const quiet = places.slice(0, Math.ceil(quietShare * places.length));
  const step = Math.max(1, quiet.length / mostFrames);
  return Array.from({ length: Math.floor(quiet.length / step) }, (_, i) => quiet[Math.floor(i * step)]!);
}

/** Moving mean over 2·`reach` + 1 bins. */
export function smoothed(spectrum: Float64Array, reach: number): Float64Array {
  return spectrum.map((_, k) => {
    const from = Math.max(0, k - reach);
    const to = Math.min(spectrum.length - 1, k + reach);
    let sum = 0;
    for (let j = from; j <= to; j++) sum += spectrum[j]!;
    return sum / (to - from + 1);
  });
}
