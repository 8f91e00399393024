import { multitaperPower, taperVarianceHz2 } from "../../signals/multitaperPower.ts";
import { type SpectralMoments, spectralMoments } from "../../signals/spectralMoments.ts";
import { sampleRateHz } from "./voicingFrames.ts";

const spectrumSize = 1024;
/** Tapers for a release of 10 ms or more, and for a shorter one, whose spectrum they would widen too much. */
const manyTapers = 5;
const fewTapers = 3;
const fewTapersBelowMs = 10;
/** The burst is looked for this far before and behind the release, whose place is known to a frame or two only. */
const searchMs = { before: 10, behind: 5 } as const;
const stepSamples = sampleRateHz / 2000;
const burstShare = 0.1;
const quietSteps = 4;

/**
 * Spectral moments over `band` of a stop's release that was found at `releaseMs`: from the burst on, over `lengthMs`, up
 * to `endMs` at most. The window begins with the burst, since a step inside it would spread over the whole spectrum. What the tapers widen is
 * taken off the spread. Null when nothing is there.
 *
 * One release tells no more than its length allows, with any method: over a release of T seconds whose noise has
 * spectrum S, the standard error of the centre c is √(∫(f − c)²S² ∕ T) ∕ ∫S, of a bell-shaped spectrum 0.38 √(spread ∕ T)
 * for the centre and 0.23 √(spread ∕ T) for the spread: at 1000 Hz and 10 ms, 119 and 73 Hz.
 */
export function releaseSpectrum(
  samples: Float32Array,
  releaseMs: number,
  lengthMs: number,
  endMs: number,
  band: { readonly from: number; readonly to: number },
): SpectralMoments | null {
  const sample = (ms: number) => Math.round((ms * sampleRateHz) / 1000);
  const from = burstStart(
    samples,
    sample(releaseMs - searchMs.before),
    sample(Math.min(endMs, releaseMs + searchMs.behind)),
  );
  const to = Math.min(samples.length, sample(endMs), from + sample(lengthMs));
  const durationSec = (to - from) / sampleRateHz;
  const tapers = durationSec * 1000 < fewTapersBelowMs ? fewTapers : manyTapers;
  const power = multitaperPower(samples, from, to, tapers, spectrumSize);
  const moments = power && spectralMoments(power, sampleRateHz / spectrumSize, band.from, band.to);
  if (moments === null) return null;
  const { spreadHz, skewness } = moments;
  const variance = spreadHz ** 2 - taperVarianceHz2(tapers, durationSec);
  if (!(variance > 0)) return null;
  const narrower = Math.sqrt(variance);
  return { ...moments, spreadHz: narrower, skewness: skewness * (spreadHz / narrower) ** 3 };
}

/**
 * First sample of the burst in `[from, to)`, by the power of the samples' differences in steps of half a millisecond: no
 * more than 10 dB below the strongest, and halfway from the quietest 2 ms where the background is louder than that.
 */
function burstStart(samples: Float32Array, from: number, to: number): number {
  const first = Math.max(1, from);
  const powers: number[] = [];
  for (let start = first; start + stepSamples <= Math.min(to, samples.length); start += stepSamples) {
    let sum = 0;
    for (let i = start; i < start + stepSamples; i++) sum += (samples[i]! - samples[i - 1]!) ** 2;
    powers.push(sum);
  }
  const strongest = Math.max(...powers);
  let quietest = Number.POSITIVE_INFINITY;
  for (let k = quietSteps; k <= powers.length; k++)
    quietest = Math.min(quietest, powers.slice(k - quietSteps, k).reduce((a, b) => a + b) / quietSteps);
  const needed = Math.max(burstShare * strongest, Math.sqrt(Math.min(quietest, strongest) * strongest));
  return (
    first +
    stepSamples *
      Math.max(
        0,
        powers.findIndex((power) => power >= needed),
      )
  );
}
