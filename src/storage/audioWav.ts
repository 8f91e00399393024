import wavefile from "wavefile";
import {
  audioBitDepth,
  audioCodec,
  audioHeaderBroken,
  audioLengthField,
  audioNoSamples,
  audioTruncated,
} from "../messages/audio.ts";
import type { AudioHeader } from "./audioHeader.ts";
import { checkLimits } from "./audioLimits.ts";
import { AudioRefused } from "./audioRefused.ts";
import { type AudioSource, asciiAt, sourceFromBytes, viewOf } from "./audioSource.ts";

export interface WavHeader extends AudioHeader {
  readonly bigEndian: boolean;
  readonly isFloat: boolean;
  readonly bits: number;
  readonly frames: number;
  readonly dataOffset: number;
}

const codecs: Readonly<Record<number, string>> = {
  2: "Microsoft ADPCM",
  6: "A-law",
  7: "µ-law",
  17: "IMA ADPCM",
  49: "GSM 6.10",
  80: "MPEG",
  85: "MP3 in WAV",
  255: "AAC",
};
/** A file of more chunks than this is made to keep its reader busy. */
const mostChunks = 1000;
/** Lengths that programs write when they stream and cannot come back to fill in the real one. */
const leastUnfilled = 0x7ffff000;

interface Format {
  readonly tag: number;
  readonly channels: number;
  readonly sampleRateHz: number;
  readonly blockBytes: number;
  readonly bits: number;
}

/**
 * Walks the chunks of a WAV file (RIFF, big-endian RIFX, RF64) and checks what it says against its size. Throws
 * AudioRefused for compressed sound, impossible numbers, and a file that is not whole.
 */
export function readWavHeader(source: AudioSource): WavHeader {
  const refuse = (wording: ReturnType<typeof audioNoSamples>): never => {
    throw new AudioRefused(source.name, wording);
  };
  const bigEndian = asciiAt(source.readPart(0, 4), 0, 4) === "RIFX";
  let format: Format | null = null;
  let longDataBytes: number | null = null;
  let chunks = 0;
  for (let offset = 12; offset + 8 <= source.sizeBytes; ) {
    if (++chunks > mostChunks)
      return refuse(audioHeaderBroken(`more than ${mostChunks} chunks and no sound`));
    const head = source.readPart(offset, 8);
    const name = asciiAt(head, 0, 4);
    const size = viewOf(head).getUint32(4, !bigEndian);
    if (name === "ds64")
      longDataBytes = Number(viewOf(source.readPart(offset + 8, 24)).getBigUint64(8, true));
    if (name === "fmt ")
      format = readFormat(source.readPart(offset + 8, Math.min(size, 40)), bigEndian, refuse);
    if (name === "data") {
      if (format === null) return refuse(audioHeaderBroken("the sound comes before its format"));
      const dataBytes = size === 0xffffffff && longDataBytes !== null ? longDataBytes : size;
      return checkData(source, format, offset + 8, dataBytes, bigEndian);
    }
    offset += 8 + size + (size % 2);
  }
  return refuse(format === null ? audioHeaderBroken("it holds no format") : audioNoSamples());
}

function readFormat(
  bytes: Uint8Array,
  bigEndian: boolean,
  refuse: (wording: ReturnType<typeof audioNoSamples>) => never,
): Format {
  if (bytes.length < 16) return refuse(audioHeaderBroken("its format is cut short"));
  const view = viewOf(bytes);
  const little = !bigEndian;
  const written = view.getUint16(0, little);
  const tag = written === 0xfffe && bytes.length >= 26 ? view.getUint16(24, little) : written;
  const sampleRateHz = view.getUint32(4, little);
  return {
    tag,
    channels: view.getUint16(2, little),
    sampleRateHz,
    blockBytes: view.getUint16(12, little),
    bits: view.getUint16(14, little),
  };
}

function checkData(
  source: AudioSource,
  format: Format,
  dataOffset: number,
  dataBytes: number,
  bigEndian: boolean,
): WavHeader {
  const { tag, channels, sampleRateHz, blockBytes, bits } = format;
  const { name } = source;
  if (tag !== 1 && tag !== 3)
    throw new AudioRefused(name, audioCodec(codecs[tag] ?? `WAV format number ${tag}`));
  checkLimits(name, sampleRateHz, channels, 0);
  const isFloat = tag === 3;
  if (!(isFloat ? [32, 64] : [8, 16, 24, 32]).includes(bits))
    throw new AudioRefused(name, audioBitDepth(bits, isFloat ? "floating point" : "whole numbers"));
  if (blockBytes !== (channels * bits) / 8)
    throw new AudioRefused(
      name,
      audioHeaderBroken(
        `${blockBytes} bytes a block, but ${channels} channels of ${bits} bits are ${(channels * bits) / 8}`,
      ),
    );
  const thereBytes = source.sizeBytes - dataOffset;
  const bytesPerSec = blockBytes * sampleRateHz;
  if (dataBytes > thereBytes && dataBytes >= leastUnfilled)
    throw new AudioRefused(name, audioLengthField(dataBytes));
  if (dataBytes > thereBytes || dataBytes % blockBytes !== 0)
    throw new AudioRefused(
      name,
      audioTruncated(dataBytes / bytesPerSec, Math.min(thereBytes, dataBytes) / bytesPerSec),
    );
  if (dataBytes === 0)
    throw new AudioRefused(name, thereBytes > blockBytes + 8 ? audioLengthField(0) : audioNoSamples());
  const frames = dataBytes / blockBytes;
  checkLimits(name, sampleRateHz, channels, frames / sampleRateHz);
  return {
    format: "wav",
    sampleRateHz,
    channels,
    durationSec: frames / sampleRateHz,
    exact: true,
    bigEndian,
    isFloat,
    bits,
    frames,
    dataOffset,
  };
}

/** Channels of a WAV file, −1…1. */
export function decodeWav(
  bytes: Uint8Array,
  name: string,
): { header: WavHeader; channelData: Float32Array[] } {
  const header = readWavHeader(sourceFromBytes(bytes, name));
  const { channels, frames, bits, isFloat, bigEndian, dataOffset } = header;
  const channelData = Array.from({ length: channels }, () => new Float32Array(frames));
  if (bigEndian) decodeByLibrary(bytes, header, channelData);
  else {
    const view = viewOf(bytes);
    const read = sampleReader(view, bits, isFloat);
    const sampleBytes = bits / 8;
    for (const [channel, samples] of channelData.entries()) {
      let offset = dataOffset + channel * sampleBytes;
      for (let frame = 0; frame < frames; frame++, offset += sampleBytes * channels)
        samples[frame] = read(offset);
    }
  }
  return { header, channelData };
}

function sampleReader(view: DataView, bits: number, isFloat: boolean): (offset: number) => number {
  if (isFloat)
    return bits === 32
      ? (offset) => view.getFloat32(offset, true)
      : (offset) => view.getFloat64(offset, true);
  if (bits === 8) return (offset) => (view.getUint8(offset) - 128) / 128;
  if (bits === 16) return (offset) => view.getInt16(offset, true) / 32768;
  if (bits === 24)
    return (offset) => (view.getUint16(offset, true) + view.getInt8(offset + 2) * 65536) / 8388608;
  return (offset) => view.getInt32(offset, true) / 2147483648;
}

/** Big-endian sound is rare and slow to read by the library, which gives whole numbers as written. */
function decodeByLibrary(
  bytes: Uint8Array,
  { bits, isFloat, channels }: WavHeader,
  channelData: Float32Array[],
): void {
  const samples = new wavefile.WaveFile(bytes).getSamples(false, Float64Array) as unknown as
    | Float64Array
    | Float64Array[];
  const planes = channels === 1 ? [samples as Float64Array] : (samples as Float64Array[]);
  const [middle, scale] = isFloat ? [0, 1] : bits === 8 ? [128, 128] : [0, 2 ** (bits - 1)];
  for (const [channel, plane] of planes.entries())
    for (let frame = 0; frame < plane.length; frame++)
      channelData[channel]![frame] = (plane[frame]! - middle) / scale;
}
