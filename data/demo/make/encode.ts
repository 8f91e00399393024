import { runCommand } from "./commands.ts";

export type AudioFormat = "flac" | "wav";
export const sampleRateHz = 16_000;

/** Resamples a voice's WAV to 16 kHz, 16 bit, peak at -3 dB, without dither: the same input gives the same bytes. */
export function encodeAudio(source: string, target: string): void {
  const shape = ["-r", String(sampleRateHz), "-b", "16", "-c", "1"];
  const best = target.endsWith(".flac") ? ["-C", "8"] : [];
  // --norm needs two passes, so that the resampler's overshoot is never clipped.
  runCommand("sox", ["-D", "--norm=-3", source, ...shape, ...best, target]);
}
