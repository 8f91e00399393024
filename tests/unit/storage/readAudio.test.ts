import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import wavefile from "wavefile";
import {
  audioCodec,
  audioEmpty,
  audioLengthField,
  audioNotNumber,
  audioTruncated,
} from "../../../src/messages/audio.ts";
import { readAudioHeader } from "../../../src/storage/audioHeader.ts";
import { AudioRefused } from "../../../src/storage/audioRefused.ts";
import { sourceFromBytes } from "../../../src/storage/audioSource.ts";
import { cutAudio, readAudio } from "../../../src/storage/readAudio.ts";
import { silentFlac } from "../../helpers/silentFlac.ts";
import { tone, wavBytes } from "../../helpers/wavBytes.ts";

const fixture = (name: string): Uint8Array => readFileSync(join(import.meta.dirname, "fixtures", name));
const sound = tone(440, 16000, 0.25);

test.each([
  ["8", 1 / 128],
  ["16", 1 / 32768],
  ["24", 1 / 8388608],
  ["32", 1e-7],
  ["32f", 1e-7],
  ["64", 1e-7],
])("readAudio of a %s-bit WAV gives the samples to one step", async (bitDepth, step) => {
  const audio = await readAudio(wavBytes([sound], 16000, bitDepth), "a.wav");
  expect(audio).toMatchObject({
    sampleRateHz: 16000,
    channels: 1,
    channelRule: "mono",
    format: "wav",
    durationSec: 0.25,
    warnings: [],
  });
  expect(largestDifference(audio.samples, sound)).toBeLessThanOrEqual(step);
});

test("readAudio reads big-endian and extensible WAV, and cue and list chunks before and after the sound", async () => {
  const bigEndian = await readAudio(wavBytes([sound], 16000, "16", "RIFX"), "a.wav");
  expect(largestDifference(bigEndian.samples, sound)).toBeLessThanOrEqual(1 / 32768);
  const wav = new wavefile.WaveFile(wavBytes([sound, sound], 16000, "24"));
  wav.setCuePoint({ position: 100, label: "か" });
  wav.setTag("ICMT", "a comment");
  const tagged = await readAudio(wav.toBuffer(), "a.wav");
  expect(tagged.channels).toBe(2);
  expect(largestDifference(tagged.samples, sound)).toBeLessThanOrEqual(1 / 8388608);
  const extensible = extensibleWav(sound);
  expect(largestDifference((await readAudio(extensible, "a.wav")).samples, sound)).toBeLessThanOrEqual(
    1 / 32768,
  );
});

test.each([
  ["tone.flac", 48000, 24000, 3],
  ["tone.opus", 48000, 24000, 1],
  ["tone.mp3", 48000, 24000, 1],
])(
  "readAudio of %s gives its 440 Hz tone of half a second at −6 dB",
  async (name, rateHz, length, decimals) => {
    const audio = await readAudio(fixture(name), name);
    expect(audio).toMatchObject({ sampleRateHz: rateHz, channels: 1, warnings: [] });
    expect(Math.abs(audio.samples.length - length)).toBeLessThanOrEqual(1152);
    expect(amplitudeAt(audio.samples.subarray(4800, 19200), 440, rateHz)).toBeCloseTo(
      10 ** (-6 / 20),
      decimals,
    );
  },
);

test.each(["tone.opus", "tone.mp3"])(
  "readAudio of %s starts and ends where the original does, to 1 ms",
  async (name) => {
    const [flac, coded] = await Promise.all(
      ["tone.flac", name].map(async (file) => (await readAudio(fixture(file), file)).samples),
    );
    const loud = (value: number): boolean => Math.abs(value) > 0.1;
    expect(coded).toHaveLength(24000);
    expect(Math.abs(coded!.findIndex(loud) - flac!.findIndex(loud))).toBeLessThan(48);
    expect(Math.abs(coded!.findLastIndex(loud) - flac!.findLastIndex(loud))).toBeLessThan(48);
  },
);

test.each(["tone.flac", "tone.opus", "tone.mp3"])(
  "readAudioHeader of %s gives rate, channels and length without decoding",
  (name) => {
    const header = readAudioHeader(sourceFromBytes(fixture(name), name));
    expect(header).toMatchObject({ sampleRateHz: 48000, channels: 1 });
    expect(Math.abs(header.durationSec - 0.5)).toBeLessThan(header.exact ? 1e-9 : 0.06);
  },
);

test("readAudio goes by content, and remarks a name that says otherwise", async () => {
  const audio = await readAudio(fixture("tone.flac"), "a.wav");
  expect(audio.format).toBe("flac");
  expect(audio.warnings.map(({ rule }) => rule)).toEqual(["audio-extension"]);
});

test.each(["tone.flac", "tone.opus", "tone.mp3"])("readAudio refuses %s cut short anywhere", async (name) => {
  const bytes = fixture(name);
  for (const share of [0.3, 0.6, 0.9])
    expect(await refusal(bytes.subarray(0, Math.round(bytes.length * share)), name)).toBe("audio-truncated");
  expect(await refusal(bytes.subarray(0, bytes.length - 1), name)).toBe("audio-truncated");
});

test("readAudio refuses a truncated WAV with the length promised and found", async () => {
  const bytes = wavBytes([sound], 16000, "16");
  await expect(readAudio(bytes.subarray(0, 44 + 4000), "a.wav")).rejects.toThrow(
    audioTruncated(0.25, 0.125).message,
  );
  expect(await refusal(bytes.subarray(0, bytes.length - 1), "a.wav")).toBe("audio-truncated");
});

test("readAudio refuses a length field that was never filled in", async () => {
  const bytes = wavBytes([sound], 16000, "16");
  for (const length of [0xffffffff, 0x7ffff000 + 10, 0]) {
    const view = new DataView(bytes.buffer.slice(0));
    view.setUint32(40, length, true);
    await expect(readAudio(new Uint8Array(view.buffer), "a.wav")).rejects.toThrow(
      audioLengthField(length).message,
    );
  }
});

test.each([
  ["0 channels", 22, 0, "audio-channels"],
  ["200 channels", 22, 200, "audio-channels"],
  ["a rate of 3 Hz", 24, 3, "audio-sample-rate"],
  ["a rate of 44100000 Hz", 24, 44_100_000, "audio-sample-rate"],
  ["12 bits", 34, 12, "audio-bit-depth"],
  ["a block of 7 bytes", 32, 7, "audio-header"],
])("readAudio refuses a WAV header with %s", async (_, offset, value, rule) => {
  const bytes = wavBytes([sound], 16000, "16");
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  if (offset === 24) view.setUint32(offset, value, true);
  else view.setUint16(offset, value, true);
  expect(await refusal(bytes, "a.wav")).toBe(rule);
});

test("readAudio names the codec of compressed sound in WAV, and Vorbis in Ogg", async () => {
  const bytes = wavBytes([sound], 16000, "16");
  new DataView(bytes.buffer, bytes.byteOffset).setUint16(20, 7, true);
  await expect(readAudio(bytes, "a.wav")).rejects.toThrow(audioCodec("µ-law").message);
  await expect(readAudio(fixture("vorbis.ogg"), "a.ogg")).rejects.toThrow(
    audioCodec("Vorbis in Ogg").message,
  );
});

test("readAudio refuses what is empty, text, noise, only a header, or not a number", async () => {
  await expect(readAudio(new Uint8Array(0), "a.wav")).rejects.toThrow(audioEmpty().message);
  expect(await refusal(new TextEncoder().encode("<html>404</html>"), "a.wav")).toBe("audio-format-unknown");
  expect(
    await refusal(
      Uint8Array.from({ length: 5000 }, (_, index) => (index * 7919) % 251),
      "a.mp3",
    ),
  ).toBe("audio-format-unknown");
  expect(await refusal(wavBytes([[]], 16000, "16"), "a.wav")).toBe("audio-no-samples");
  expect(await refusal(fixture("tone.flac").subarray(0, 42), "a.flac")).toBe("audio-no-samples");
  expect(await refusal(fixture("tone.flac").subarray(0, 20), "a.flac")).toBe("audio-header");
  const bad = wavBytes([[0, 0.1, Number.NaN, 0.2]], 16000, "32f");
  await expect(readAudio(bad, "a.wav")).rejects.toThrow(audioNotNumber(2 / 16000).message);
});

test("readAudio stops a FLAC whose header lies about its length, before it fills memory", async () => {
  const setTotal = (frames: number): Uint8Array => {
    const bytes = Uint8Array.from(fixture("tone.flac"));
    const view = new DataView(bytes.buffer);
    bytes[21] = (bytes[21]! & 0xf0) | Math.floor(frames / 2 ** 32);
    view.setUint32(22, frames % 2 ** 32, false);
    return bytes;
  };
  expect(await refusal(setTotal(2 ** 35), "a.flac")).toBe("audio-too-long");
  expect(await refusal(setTotal(100), "a.flac")).toBe("audio-longer-than-header");
  expect(await refusal(setTotal(0), "a.flac")).toBe("audio-length-field");
});

test("readAudio stops a FLAC of next to nothing that unpacks to what its header says", async () => {
  const bomb = silentFlac(300, 65535 * 300);
  expect(bomb.length).toBeLessThan(10_000);
  expect(await refusal(bomb, "a.flac")).toBe("audio-unpacks-too-far");
});

test("readAudio refuses a WAV of a million chunks and no sound, in time", async () => {
  const bytes = new Uint8Array(8_000_012);
  bytes.set(wavBytes([[0]], 16000, "16").subarray(0, 12));
  const startedAt = performance.now();
  expect(await refusal(bytes, "a.wav")).toBe("audio-header");
  expect(performance.now() - startedAt).toBeLessThan(1000);
});

test.each([
  ["4 GB of sound", 40, 0xfffffff0, "audio-length-field"],
  ["0 channels", 22, 0, "audio-channels"],
  ["65535 channels", 22, 65535, "audio-channels"],
  ["4 billion samples a second", 24, 0xffffffff, "audio-sample-rate"],
])("readAudio names a header that claims %s", async (_, at, value, rule) => {
  const bytes = wavBytes([sound], 16000, "16");
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  if (at === 22) view.setUint16(at, value, true);
  else view.setUint32(at, value, true);
  expect(await refusal(bytes, "a.wav")).toBe(rule);
});

test("readAudio remarks silence, clipping and samples above full scale, and uses the recording", async () => {
  const rules = async (channel: number[], bits = "16"): Promise<string[]> =>
    (await readAudio(wavBytes([channel], 16000, bits), "a.wav")).warnings.map(({ rule }) => rule);
  expect(await rules(new Array(1600).fill(0))).toEqual(["audio-silent"]);
  expect(await rules(tone(440, 16000, 0.1, 2))).toEqual(["audio-clipped"]);
  expect(await rules(tone(440, 16000, 0.1, 2), "32f")).toEqual(["audio-over-range"]);
  expect(await rules(sound)).toEqual([]);
});

test("readAudio takes the louder channel when the other is near silent, else the average, and says which", async () => {
  const quiet = sound.map((value) => value * 0.01);
  const right = await readAudio(wavBytes([quiet, sound], 16000, "24"), "a.wav");
  expect(right.channelRule).toBe("channel 2 of 2, the others being near silent");
  expect(largestDifference(right.samples, sound)).toBeLessThan(1e-6);
  const other = tone(880, 16000, 0.25);
  const both = await readAudio(wavBytes([sound, other], 16000, "24"), "a.wav");
  expect(both.channelRule).toBe("average of 2 channels");
  expect(
    largestDifference(
      both.samples,
      sound.map((value, index) => (value + other[index]!) / 2),
    ),
  ).toBeLessThan(1e-6);
  const cancelling = await readAudio(wavBytes([sound, sound.map((value) => -value)], 16000, "24"), "a.wav");
  expect(cancelling.warnings.map(({ rule }) => rule)).toEqual(["audio-channels-cancel"]);
  expect(largestDifference(cancelling.samples, sound)).toBeLessThan(1e-6);
});

test("cutAudio gives the part between two times and refuses one that is not there", async () => {
  const audio = await readAudio(wavBytes([sound], 16000, "32f"), "a.wav");
  const part = cutAudio(audio, 0.1, 0.2, "a.wav");
  expect(part.samples).toEqual(audio.samples.slice(1600, 3200));
  expect(part.durationSec).toBe(0.1);
  expect(cutAudio(audio, null, null, "a.wav")).toBe(audio);
  expect(cutAudio(audio, 0.1, null, "a.wav").durationSec).toBeCloseTo(0.15, 9);
  for (const [start, end] of [
    [0.2, 0.3],
    [0.2, 0.1],
    [-1, 0.1],
    [5, 6],
  ] as const)
    expect(() => cutAudio(audio, start, end, "a.wav")).toThrow(AudioRefused);
});

async function refusal(bytes: Uint8Array, name: string): Promise<string> {
  try {
    await readAudio(bytes, name);
  } catch (error) {
    if (error instanceof AudioRefused) return error.wording.rule;
    throw error;
  }
  return "accepted";
}

function largestDifference(samples: Float32Array, expected: readonly number[]): number {
  expect(samples).toHaveLength(expected.length);
  return expected.reduce((most, value, index) => Math.max(most, Math.abs(value - samples[index]!)), 0);
}

/** Amplitude of the component at `frequencyHz`, by correlation with a sine and a cosine. */
function amplitudeAt(samples: Float32Array, frequencyHz: number, sampleRateHz: number): number {
  let [real, imaginary] = [0, 0];
  for (const [index, value] of samples.entries()) {
    const angle = (2 * Math.PI * frequencyHz * index) / sampleRateHz;
    real += value * Math.cos(angle);
    imaginary += value * Math.sin(angle);
  }
  return (2 * Math.hypot(real, imaginary)) / samples.length;
}

/** WAVE_FORMAT_EXTENSIBLE with the PCM sub-format, written by hand: the library does not write it for 16 bits. */
function extensibleWav(samples: readonly number[]): Uint8Array {
  const bytes = new Uint8Array(68 + samples.length * 2);
  const view = new DataView(bytes.buffer);
  const ascii = (at: number, text: string): void => bytes.set(new TextEncoder().encode(text), at);
  ascii(0, "RIFF");
  view.setUint32(4, bytes.length - 8, true);
  ascii(8, "WAVEfmt ");
  for (const [at, value] of [
    [16, 40],
    [24, 16000],
    [28, 32000],
    [40, 4],
    [64, samples.length * 2],
  ] as const)
    view.setUint32(at, value, true);
  for (const [at, value] of [
    [20, 0xfffe],
    [22, 1],
    [32, 2],
    [34, 16],
    [36, 22],
    [38, 16],
    [44, 1],
    [46, 0],
    [48, 0],
    [50, 0x10],
  ] as const)
    view.setUint16(at, value, true);
  bytes.set([0x80, 0, 0, 0xaa, 0, 0x38, 0x9b, 0x71], 52);
  ascii(60, "data");
  for (const [index, value] of samples.entries())
    view.setInt16(68 + index * 2, Math.round(value * 32768), true);
  return bytes;
}
