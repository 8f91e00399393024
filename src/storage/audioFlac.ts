import { FLACDecoder } from "@wasm-audio-decoders/flac";
import { audioHeaderBroken, audioNoSamples } from "../messages/audio.ts";
import type { AudioHeader } from "./audioHeader.ts";
import { checkLimits } from "./audioLimits.ts";
import { AudioRefused } from "./audioRefused.ts";
import { decodeInSlices } from "./audioSlices.ts";
import { type AudioSource, asciiAt, id3Length, viewOf } from "./audioSource.ts";

/** Reads the STREAMINFO block (RFC 9639, section 8.2). A length of 0 there means unknown: then `exact` is false. */
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
  return { format: "flac", sampleRateHz, channels, durationSec: frames / sampleRateHz, exact: frames > 0 };
}

/** The decoder takes a frame as whole only when more bytes follow; without these it drops the last one of many files. */
const trailingBytes = 64;

export async function decodeFlac(
  bytes: Uint8Array,
  header: AudioHeader,
  name: string,
): Promise<Float32Array[]> {
  const padded = new Uint8Array(bytes.length + trailingBytes);
  padded.set(bytes);
  return decodeInSlices(new FLACDecoder(), padded, header, name);
}
