import { OggOpusDecoder } from "ogg-opus-decoder";
import { audioCodec, audioCutOff, audioHeaderBroken, audioNoSamples } from "../messages/audio.ts";
import type { AudioHeader } from "./audioHeader.ts";
import { checkLimits } from "./audioLimits.ts";
import { AudioRefused } from "./audioRefused.ts";
import { decodeInSlices } from "./audioSlices.ts";
import { type AudioSource, asciiAt, viewOf } from "./audioSource.ts";

/** Opus always decodes to this rate (RFC 7845). */
const opusRateHz = 48_000;
/** A page is at most 27 + 255 + 255 × 255 bytes (RFC 3533). */
const longestPageBytes = 65_307;

/** Channels and pre-skip from OpusHead, length from the last page (RFC 7845); refuses a stream without its end. */
export function readOpusHeader(source: AudioSource): AudioHeader {
  const first = source.readPart(0, 64);
  const headAt = 27 + (first[26] ?? 0);
  const head = asciiAt(first, headAt, 8);
  if (head !== "OpusHead") {
    const isVorbis = asciiAt(first, headAt + 1, 6) === "vorbis";
    throw new AudioRefused(
      source.name,
      isVorbis ? audioCodec("Vorbis in Ogg") : audioHeaderBroken("the Ogg file holds no Opus stream"),
    );
  }
  const channels = first[headAt + 9]!;
  const preSkip = viewOf(first).getUint16(headAt + 10, true);
  const last = lastPage(source);
  if (last === null) throw new AudioRefused(source.name, audioHeaderBroken("its pages are cut short"));
  const frames = last.granule - preSkip;
  if (!last.whole || !last.isEnd)
    throw new AudioRefused(source.name, audioCutOff(Math.max(0, frames) / opusRateHz));
  if (frames <= 0) throw new AudioRefused(source.name, audioNoSamples());
  checkLimits(source.name, opusRateHz, channels, frames / opusRateHz);
  return {
    format: "opus",
    sampleRateHz: opusRateHz,
    channels,
    durationSec: frames / opusRateHz,
    exact: true,
  };
}

/** The decoder leaves the pre-skip (at most 80 ms in practice) behind the end of a file with one page of sound. */
const extraFrames = 3840;

export async function decodeOpus(
  bytes: Uint8Array,
  header: AudioHeader,
  name: string,
): Promise<Float32Array[]> {
  return decodeInSlices(new OggOpusDecoder(), bytes, header, name, { missing: 1, extra: extraFrames });
}

function lastPage(source: AudioSource): { granule: number; isEnd: boolean; whole: boolean } | null {
  const from = Math.max(0, source.sizeBytes - 2 * longestPageBytes);
  const tail = source.readPart(from, 2 * longestPageBytes);
  for (let at = tail.length - 27; at >= 0; at--) {
    if (asciiAt(tail, at, 4) !== "OggS" || tail[at + 4] !== 0) continue;
    const segments = tail[at + 26]!;
    const lacing = tail.subarray(at + 27, at + 27 + segments);
    const bodyBytes = lacing.reduce((sum, length) => sum + length, 0);
    const whole = lacing.length === segments && at + 27 + segments + bodyBytes <= tail.length;
    const granule = Number(viewOf(tail).getBigInt64(at + 6, true));
    return { granule, isEnd: (tail[at + 5]! & 4) !== 0, whole };
  }
  return null;
}
