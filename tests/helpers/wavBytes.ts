import wavefile from "wavefile";

/** A WAV file of these channels, samples −1…1. `bitDepth` as wavefile names it: 8, 16, 24, 32, 32f, 64. */
export function wavBytes(
  channels: readonly (readonly number[])[],
  sampleRateHz: number,
  bitDepth: string,
  container = "RIFF",
): Uint8Array {
  const scale = { "8": 128, "16": 32768, "24": 8388608, "32": 2147483648 }[bitDepth];
  const raw = channels.map((channel) =>
    channel.map((value) => {
      if (scale === undefined) return value;
      const whole = Math.max(-scale, Math.min(scale - 1, Math.round(value * scale)));
      return bitDepth === "8" ? whole + 128 : whole;
    }),
  );
  const wav = new wavefile.WaveFile();
  wav.fromScratch(channels.length, sampleRateHz, bitDepth, raw as never, { container });
  return wav.toBuffer();
}

export function tone(
  frequencyHz: number,
  sampleRateHz: number,
  durationSec: number,
  amplitude = 0.5,
): number[] {
  return Array.from(
    { length: Math.round(sampleRateHz * durationSec) },
    (_, index) => amplitude * Math.sin((2 * Math.PI * frequencyHz * index) / sampleRateHz),
  );
}
