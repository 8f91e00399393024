import wavefile from "wavefile";

/** What stands before and after the sound itself, so that an ear can place it: a mora or so on each side. */
export const aroundMs = 250;
const fadeMs = 5;
/** Place of the file's size in a RIFF header; that of the samples ends the header. */
const riffSizeAt = 4;

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
  return wavBytes(clip, sampleRateHz);
}

/**
 * The samples as a WAV file. The library writes the header for no samples; they are laid behind it whole, since it would
 * turn each byte into a number first (6 s of the demo's 20 minutes of speech).
 */
function wavBytes(samples: Int16Array, sampleRateHz: number): Uint8Array {
  const empty = new wavefile.WaveFile();
  empty.fromScratch(1, sampleRateHz, "16", []);
  const header = empty.toBuffer();
  const bytes = new Uint8Array(header.length + samples.byteLength);
  bytes.set(header);
  const view = new DataView(bytes.buffer);
  view.setUint32(riffSizeAt, bytes.length - 8, true);
  view.setUint32(header.length - 4, samples.byteLength, true);
  for (let i = 0, at = header.length; i < samples.length; i++, at += 2) view.setInt16(at, samples[i]!, true);
  return bytes;
}
