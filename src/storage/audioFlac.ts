import { FLACDecoder } from "@wasm-audio-decoders/flac";
import CodecParser, { type CodecFrame } from "codec-parser";
import { audioHeaderBroken, audioLengthUnknown, audioNoSamples } from "../messages/audio.ts";
import type { AudioHeader } from "./audioHeader.ts";
import { checkLimits } from "./audioLimits.ts";
import { AudioRefused } from "./audioRefused.ts";
import { decodeInSlices, type SliceDecoder } from "./audioSlices.ts";
import { type AudioSource, asciiAt, id3Length, viewOf } from "./audioSource.ts";

/**
 * Reads the STREAMINFO block (RFC 9639, section 8.2). A length of 0 there means unknown, as programs write that cannot
 * go back to their header: refused, since a file that is cut short would pass for faster speech.
 */
export function readFlacHeader(source: AudioSource): AudioHeader {
  const start = source.readPart(id3Length(source), 42);
  if (start.length < 42 || asciiAt(start, 0, 4) !== "fLaC" || (start[4]! & 0x7f) !== 0)
    throw new AudioRefused(source.name, audioHeaderBroken("its STREAMINFO block is missing or cut short"));
  const packed = viewOf(start).getUint32(18, false);
  const sampleRateHz = packed >>> 12;
  const channels = ((packed >>> 9) & 7) + 1;
  const frames = (start[21]! & 0x0f) * 2 ** 32 + viewOf(start).getUint32(22, false);
  checkLimits(source.name, sampleRateHz, channels, frames / sampleRateHz);
  if (source.sizeBytes <= id3Length(source) + 42) throw new AudioRefused(source.name, audioNoSamples());
  if (frames === 0) throw new AudioRefused(source.name, audioLengthUnknown());
  return { format: "flac", sampleRateHz, channels, durationSec: frames / sampleRateHz, exact: true };
}

/** The parser takes a frame as whole only when more bytes follow; without these it drops the last one of many files. */
const trailingBytes = 64;

/** A decoder that did its last file well. Making one costs as much as decoding seconds of speech. */
let idle: FLACDecoder | null = null;

export async function decodeFlac(
  bytes: Uint8Array,
  header: AudioHeader,
  name: string,
): Promise<Float32Array[]> {
  const stream = withoutTag(bytes);
  const padded = new Uint8Array(stream.length + trailingBytes);
  padded.set(stream);
  const used = idle;
  idle = null;
  if (used !== null) {
    try {
      return await decodeWith(used, padded, header, name);
    } catch (error) {
      // What stood behind the sound of the file before may be to blame.
      if (!(error instanceof AudioRefused)) throw error;
    }
  }
  return decodeWith(new FLACDecoder(), padded, header, name);
}

/** Keeps the decoder for the next file when all went well, and only one of several that were at work at once. */
async function decodeWith(
  decoder: FLACDecoder,
  padded: Uint8Array,
  header: AudioHeader,
  name: string,
): Promise<Float32Array[]> {
  await decoder.ready;
  let whole = false;
  try {
    const channels = await decodeInSlices(framesOf(decoder), padded, header, name);
    whole = true;
    return channels;
  } finally {
    if (whole && idle === null) idle = decoder;
    else decoder.free();
  }
}

/** Without the 128 bytes that some programs lay behind the sound, title and artist after the letters TAG (ID3v1). */
function withoutTag(bytes: Uint8Array): Uint8Array {
  return asciiAt(bytes, bytes.length - 128, 3) === "TAG" ? bytes.subarray(0, -128) : bytes;
}

/** Decodes the frames of one stream; frames stand for themselves (RFC 9639, section 9), so that any decoder will do. */
function framesOf(decoder: FLACDecoder): SliceDecoder {
  const parser = new CodecParser<CodecFrame>("audio/flac", { enableFrameCRC32: false });
  return {
    ready: decoder.ready,
    decode: (bytes) => decoder.decodeFrames(bytesOf(parser.parseChunk(bytes))),
    flush() {
      const frames = bytesOf(parser.flush());
      const last = frames.pop();
      if (last !== undefined) frames.push(last.subarray(0, last.length - trailingBytes));
      return decoder.decodeFrames(frames);
    },
    free() {},
  };
}

function bytesOf(frames: Iterator<CodecFrame>): Uint8Array[] {
  const found: Uint8Array[] = [];
  for (let next = frames.next(); next.done !== true; next = frames.next()) found.push(next.value.data);
  return found;
}
