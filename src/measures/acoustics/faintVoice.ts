import type { F0Range } from "./frameEvidence.ts";
import { type LowBand, lowBinHz, lowBins, smoothed } from "./lowBand.ts";
import type { VowelStretch } from "./vowelStretch.ts";

/** Harmonics that are summed; steps of the search for F0. */
const harmonics = 4;
const stepRatio = 1.03;
/** Frames on either side over which spectra are averaged: 25 ms in all. */
const reach = 2;
/** Voice is looked for from this many frames before the vowel to this many after. */
const framesBefore = 4;
const framesAfter = 2;
/** What the quietest place of C1 holds above this many times the background is the room's; so much of it is still there. */
const tailAbove = 1.5;
const tailLeft = 0.7;
/** That place is averaged over frames this far off on either side. */
const quietReach = 4;
const tailSmoothBins = 3;

/** Looks for voice that hardly stands out: see `findFaintVoice`. */
export type FaintVoiceSearch = (stretch: VowelStretch, from: number) => number;

/**
 * Greatest evidence for a harmonic sound in the vowel, in nats: log-likelihood ratio of "tones at F0 and its next three
 * harmonics" against "only background", whose power in a bin is exponentially distributed (x − 1 − ln x for a bin x
 * times the background, where x > 1). Background is the recording's, and the fading sound of the room as it stands at
 * the quietest place of a voiceless C1: an echo only falls from there. F0 is tried over the speaker's range. About 1–5
 * where there is none, tens where a voice stands 10 dB above the background in one harmonic.
 */
export function createFaintVoiceSearch(band: LowBand, range: F0Range): FaintVoiceSearch {
  const tried = triedBins(range);
  const lowest = Math.round((0.9 * range.low) / lowBinHz);

  return (stretch, from) => {
    const first = Math.min(stretch.c1From ?? from, from);
    const last = Math.min(stretch.to, stretch.vowelTo + framesAfter + 1);
    if (last <= first) return 0;
    const spectra = averagedSpectra(band, first, last);
    const background = localBackground(band, spectra, stretch, first, lowest);
    const gain = new Float64Array(lowBins);
    let best = 0;
    for (let t = Math.max(from, stretch.vowelFrom - framesBefore); t < last; t++) {
      const spectrum = spectra[t - first]!;
      for (let k = 0; k < lowBins; k++) {
        const x = spectrum[k]! / background[k]!;
        gain[k] = x > 1 ? x - 1 - Math.log(x) : 0;
      }
      for (let f = 0; f < tried.length; f += harmonics) {
        let sum = 0;
        for (let h = 0; h < harmonics; h++) sum += gain[tried[f + h]!]!;
        if (sum > best) best = sum;
      }
    }
    return best;
  };
}

/** Bins of each F0 and its harmonics; bin 0, which is never filled, stands for a harmonic above 1100 Hz. */
function triedBins({ low, high }: F0Range): Uint8Array {
  const bins: number[] = [];
  for (let f0 = low; f0 <= high; f0 *= stepRatio)
    for (let h = 1; h <= harmonics; h++) bins.push(h * f0 < 1100 ? Math.round((h * f0) / lowBinHz) : 0);
  return Uint8Array.from(bins);
}

function averagedSpectra(band: LowBand, first: number, last: number): Float64Array[] {
  const single = Array.from({ length: last - first }, (_, i) => {
    const out = new Float64Array(lowBins);
    band.spectrum(first + i, out);
    return out;
  });
  return single.map((_, i) => {
    const from = Math.max(0, i - reach);
    return mean(single.slice(from, i + reach + 1));
  });
}

function localBackground(
  { background }: LowBand,
  spectra: readonly Float64Array[],
  stretch: VowelStretch,
  first: number,
  lowest: number,
): Float64Array {
  const own = background.slice();
  own[0] = Number.POSITIVE_INFINITY;
  if (stretch.c1From === null) return own;
  const end = Math.min(spectra.length, Math.max(1, stretch.vowelFrom - first));
  let least = Number.POSITIVE_INFINITY;
  let place = -1;
  const top = Math.round(1000 / lowBinHz);
  for (let i = 0; i < end; i++) {
    let sum = 0;
    for (let k = lowest; k < top; k++) sum += spectra[i]![k]! / background[k]!;
    if (sum >= least) continue;
    least = sum;
    place = i;
  }
  if (place < 0) return own;
  const near = spectra.slice(Math.max(0, place - quietReach), Math.min(end, place + quietReach + 1));
  const tail = smoothed(mean(near), tailSmoothBins);
  for (let k = 1; k < lowBins; k++) own[k]! += tailLeft * Math.max(0, tail[k]! - tailAbove * background[k]!);
  return own;
}

function mean(spectra: readonly Float64Array[]): Float64Array {
  const out = new Float64Array(lowBins);
  for (const spectrum of spectra) for (let k = 0; k < lowBins; k++) out[k]! += spectrum[k]! / spectra.length;
  return out;
}
