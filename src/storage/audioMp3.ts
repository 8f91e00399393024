import { MPEGDecoder } from "mpg123-decoder";
import { audioCutOff, audioHeaderBroken } from "../messages/audio.ts";
import type { AudioHeader } from "./audioHeader.ts";
import { checkLimits } from "./audioLimits.ts";
import { AudioRefused } from "./audioRefused.ts";
import { decodeInSlices } from "./audioSlices.ts";
import { type AudioSource, asciiAt, id3Length, sourceFromBytes, viewOf } from "./audioSource.ts";

const kbps = {
  mpeg1: [0, 32, 40, 48, 56, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320],
  mpeg2: [0, 8, 16, 24, 32, 40, 48, 56, 64, 80, 96, 112, 128, 144, 160],
} as const;
const ratesHz = [44100, 48000, 32000] as const;

interface Frame {
  readonly bytes: number;
  readonly samples: number;
  readonly sampleRateHz: number;
  readonly channels: number;
  readonly isMpeg1: boolean;
}

/** The Layer III frame whose four header bytes are `header`; null when they are none (ISO/IEC 11172-3, 13818-3). */
export function mp3Frame(header: Uint8Array): Frame | null {
  const [sync, second, third, fourth] = header;
  if (header.length < 4 || sync !== 0xff || (second! & 0xe6) !== 0xe2) return null;
  const version = (second! >> 3) & 3;
  const bitrate = third! >> 4;
  const rate = (third! >> 2) & 3;
  if (version === 1 || bitrate === 0 || bitrate === 15 || rate === 3) return null;
  const isMpeg1 = version === 3;
  const sampleRateHz = ratesHz[rate]! / (isMpeg1 ? 1 : version === 2 ? 2 : 4);
  const samples = isMpeg1 ? 1152 : 576;
  const bitsPerSec = (isMpeg1 ? kbps.mpeg1 : kbps.mpeg2)[bitrate]! * 1000;
  const bytes = Math.floor((samples / 8) * (bitsPerSec / sampleRateHz)) + ((third! >> 1) & 1);
  return { bytes, samples, sampleRateHz, channels: fourth! >> 6 === 3 ? 1 : 2, isMpeg1 };
}

/** Length by the count of frames where the file says it (Xing, Info), else reckoned from the size of the first frames. */
export function readMp3Header(source: AudioSource): AudioHeader {
  const { first, offset } = firstFrame(source);
  const told = toldFrames(source.readPart(offset, first.bytes), first);
  const frames = told ?? (source.sizeBytes - offset) / meanFrameBytes(source, offset);
  const durationSec = (frames * first.samples) / first.sampleRateHz;
  checkLimits(source.name, first.sampleRateHz, first.channels, durationSec);
  return {
    format: "mp3",
    sampleRateHz: first.sampleRateHz,
    channels: first.channels,
    durationSec,
    exact: false,
  };
}

/** Channels of an MP3 file. A file that ends inside a frame, or holds fewer frames than it says, is refused. */
export async function decodeMp3(
  bytes: Uint8Array,
  header: AudioHeader,
  name: string,
): Promise<Float32Array[]> {
  const source = sourceFromBytes(bytes, name);
  const { first, offset } = firstFrame(source);
  const told = toldFrames(bytes.subarray(offset, offset + first.bytes), first);
  let frames = told === null ? 0 : -1;
  let at = offset;
  while (at + 4 <= bytes.length) {
    const frame = mp3Frame(bytes.subarray(at, at + 4));
    if (frame === null || frame.sampleRateHz !== first.sampleRateHz) break;
    at += frame.bytes;
    frames++;
  }
  const foundSec = ((at > bytes.length ? frames - 1 : frames) * first.samples) / first.sampleRateHz;
  const endsInTag = /^(TAG|APE|LYR|ID3)/.test(asciiAt(bytes, at, 3));
  if (at > bytes.length || (told !== null && frames < told))
    throw new AudioRefused(name, audioCutOff(foundSec));
  if (at + 4 <= bytes.length && !endsInTag && bytes.subarray(at).some((byte) => byte !== 0))
    throw new AudioRefused(
      name,
      audioHeaderBroken(`after ${foundSec.toFixed(2)} s comes something that is no MP3 frame`),
    );
  const decoder = new MPEGDecoder();
  // The tag's own frame is no sound, and players cut the coder's delay off: a few frames less are right.
  const walked = { ...header, durationSec: foundSec, exact: true };
  return decodeInSlices(decoder, bytes.subarray(offset, at), walked, name, {
    missing: 4 * first.samples,
    extra: 0,
  });
}

/** The first frame that another one follows, so that a chance match inside other bytes is not taken for one. */
function firstFrame(source: AudioSource): { first: Frame; offset: number } {
  const start = id3Length(source);
  const head = source.readPart(start, 1 << 16);
  for (let at = 0; at + 4 <= head.length; at++) {
    const frame = mp3Frame(head.subarray(at, at + 4));
    if (frame === null) continue;
    const next = head.subarray(at + frame.bytes, at + frame.bytes + 4);
    if (next.length < 4 || mp3Frame(next)?.sampleRateHz === frame.sampleRateHz)
      return { first: frame, offset: start + at };
  }
  throw new AudioRefused(source.name, audioHeaderBroken("no MP3 frame was found at its start"));
}

/** Frames that a Xing or Info tag in the first frame promises, that frame not counted; null without such a tag. */
function toldFrames(frame: Uint8Array, { isMpeg1, channels }: Frame): number | null {
  const at = 4 + (isMpeg1 ? (channels === 1 ? 17 : 32) : channels === 1 ? 9 : 17);
  const tag = asciiAt(frame, at, 4);
  if ((tag !== "Xing" && tag !== "Info") || frame.length < at + 12 || (frame[at + 7]! & 1) === 0) return null;
  return viewOf(frame).getUint32(at + 8, false);
}

function meanFrameBytes(source: AudioSource, offset: number): number {
  const head = source.readPart(offset, 1 << 16);
  let frames = 0;
  let at = 0;
  for (
    let frame = mp3Frame(head.subarray(0, 4));
    frame !== null && at < head.length;
    frame = mp3Frame(head.subarray(at, at + 4))
  ) {
    at += frame.bytes;
    frames++;
  }
  return at / Math.max(1, frames);
}
