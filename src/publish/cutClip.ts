import wavefile from "wavefile";

/** What stands before and after the sound itself, so that an ear can place it: a mora or so on each side. */
export const aroundMs = 250;
const fadeMs = 5;

/**
 * A stretch of a recording as the bytes of a 16-bit WAV file, with `marginMs` before and after where there is so much,
 * faded in and out over 5 ms so that the cut does not click. `samples`: one channel, −1 to 1.
 */
export function cutClip(
  samples: Float32Array,
  sampleRateHz: number,
  startMs: number,
  endMs: number,
  marginMs: number = aroundMs,
): Uint8Array {
  const at = (ms: number) => Math.round((ms / 1000) * sampleRateHz);
  const from = Math.max(0, at(startMs - marginMs));
  const to = Math.min(samples.length, at(endMs + marginMs));
  const fade = Math.min(at(fadeMs), Math.floor((to - from) / 2));
  const clip = new Int16Array(Math.max(0, to - from));
  for (let i = 0; i < clip.length; i++) {
    const gain = Math.min(1, i / fade, (clip.length - 1 - i) / fade);
    const sample = Math.max(-1, Math.min(1, samples[from + i]!)) * (Number.isNaN(gain) ? 1 : gain);
    clip[i] = Math.round(sample * 32767);
  }
  const file = new wavefile.WaveFile();
  file.fromScratch(1, sampleRateHz, "16", clip);
  return file.toBuffer();
}
