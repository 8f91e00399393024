import { audioChannels, audioSampleRate, audioTooLong } from "../messages/audio.ts";
import { AudioRefused } from "./audioRefused.ts";

/** Rates the resampler takes up to, and below which no speech corpus is recorded. */
const leastRateHz = 4000;
const mostRateHz = 192_000;
const mostChannels = 32;
/** Samples of all channels that are unpacked at once, 1.6 GB: an hour of stereo at 48 kHz, seven of mono at 16 kHz. */
export const mostValues = 400_000_000;

/** Refuses rates, channel counts and lengths that no recording of speech has or that memory cannot hold. */
export function checkLimits(
  name: string,
  sampleRateHz: number,
  channels: number,
  durationSec: number,
  most = mostValues,
): void {
  if (!(channels >= 1 && channels <= mostChannels))
    throw new AudioRefused(name, audioChannels(channels, mostChannels));
  if (!(sampleRateHz >= leastRateHz && sampleRateHz <= mostRateHz))
    throw new AudioRefused(name, audioSampleRate(sampleRateHz, leastRateHz, mostRateHz));
  if (durationSec * sampleRateHz * channels > most)
    throw new AudioRefused(name, audioTooLong(durationSec, channels, most));
}
