import { describe, expect, test } from "vitest";
import wavefile from "wavefile";
import { aroundMs, cutClip } from "../../../src/publish/cutClip.ts";

const sampleRateHz = 16000;
const tone = Float32Array.from({ length: 2 * sampleRateHz }, () => 0.5);

function read(bytes: Uint8Array) {
  const file = new wavefile.WaveFile(bytes);
  const { sampleRate, numChannels, bitsPerSample } = file.fmt as Record<string, number>;
  return {
    sampleRate,
    numChannels,
    bitsPerSample,
    samples: file.getSamples(false, Int16Array) as unknown as Int16Array,
  };
}

describe("cutClip", () => {
  test("is a 16-bit WAV of the sound and what stands around it, at the recording's own rate", () => {
    const { samples, ...format } = read(cutClip(tone, sampleRateHz, 1000, 1100));
    expect(format).toEqual({ sampleRate: sampleRateHz, numChannels: 1, bitsPerSample: 16 });
    expect(samples.length).toBe(((100 + 2 * aroundMs) / 1000) * sampleRateHz);
  });

  test("is to the byte what the library writes for the same samples", () => {
    const bytes = cutClip(tone, sampleRateHz, 1000, 1100);
    const file = new wavefile.WaveFile();
    file.fromScratch(1, sampleRateHz, "16", read(bytes).samples);
    expect(Buffer.compare(bytes, file.toBuffer())).toBe(0);
  });

  test("ends where the recording ends", () => {
    expect(read(cutClip(tone, sampleRateHz, 0, 100)).samples.length).toBe(
      ((100 + aroundMs) / 1000) * sampleRateHz,
    );
    expect(read(cutClip(tone, sampleRateHz, 1950, 2000)).samples.length).toBe(
      ((50 + aroundMs) / 1000) * sampleRateHz,
    );
  });

  test("starts and ends in silence and leaves the middle as it was", () => {
    const { samples } = read(cutClip(tone, sampleRateHz, 1000, 1100));
    expect([samples[0], samples.at(-1)]).toEqual([0, 0]);
    expect(samples[Math.floor(samples.length / 2)]).toBe(Math.round(0.5 * 32767));
  });

  test("holds samples beyond full scale at full scale", () => {
    const loud = Float32Array.from({ length: sampleRateHz }, (_, i) => (i % 2 ? 1.5 : -1.5));
    const { samples } = read(cutClip(loud, sampleRateHz, 300, 400));
    expect(Math.max(...samples)).toBe(32767);
    expect(Math.min(...samples)).toBe(-32767);
  });
});
