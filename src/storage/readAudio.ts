import {
  type AudioWording,
  audioClipped,
  audioNotNumber,
  audioOverRange,
  audioPartOutside,
  audioSilent,
} from "../messages/audio.ts";
import { toMono } from "./audioChannels.ts";
import { decodeFlac } from "./audioFlac.ts";
import { type AudioFormat, audioFormatOf, extensionRemark, readAudioHeader } from "./audioHeader.ts";
import { decodeMp3 } from "./audioMp3.ts";
import { decodeOpus } from "./audioOpus.ts";
import { AudioRefused } from "./audioRefused.ts";
import { sourceFromBytes } from "./audioSource.ts";
import { decodeWav } from "./audioWav.ts";

export interface Audio {
  /** One channel, −1…1 (floating-point files may reach beyond, which is then remarked). */
  readonly samples: Float32Array;
  readonly sampleRateHz: number;
  readonly format: AudioFormat;
  /** Channels the file has. */
  readonly channels: number;
  /** How one channel was made of them, in a few words. */
  readonly channelRule: string;
  readonly durationSec: number;
  /** What a person should know of a recording that is used all the same. */
  readonly warnings: readonly AudioWording[];
}

/** Full scale of 16-bit sound rounded down: samples beyond it are clipped. */
const fullScale = 0.9999;
const clippedShare = 0.001;
const silentPeak = 1e-4;

/**
 * Decodes a recording, told by content and not by its name: WAV, FLAC, MP3, Opus in Ogg. Throws AudioRefused, with the
 * rule and the way out, for what is not whole, not a number or too long: a truncated file is not shorter speech.
 */
export async function readAudio(bytes: Uint8Array, name: string): Promise<Audio> {
  const source = sourceFromBytes(bytes, name);
  const format = audioFormatOf(source);
  const header = readAudioHeader(source);
  const channelData = await decode(bytes, format, name);
  const { samples, channelRule, warnings } = toMono(channelData);
  const { sampleRateHz } = header;
  const remarks = [
    extensionRemark(name, format),
    ...warnings,
    ...checkSamples(samples, channelData, sampleRateHz, name),
  ];
  return {
    samples,
    sampleRateHz,
    format,
    channels: channelData.length,
    channelRule,
    durationSec: samples.length / sampleRateHz,
    warnings: remarks.filter((remark) => remark !== null),
  };
}

async function decode(bytes: Uint8Array, format: AudioFormat, name: string): Promise<Float32Array[]> {
  if (format === "wav") return decodeWav(bytes, name).channelData;
  const header = readAudioHeader(sourceFromBytes(bytes, name));
  if (format === "flac") return decodeFlac(bytes, header, name);
  return format === "mp3" ? decodeMp3(bytes, header, name) : decodeOpus(bytes, header, name);
}

function checkSamples(
  samples: Float32Array,
  channelData: readonly Float32Array[],
  sampleRateHz: number,
  name: string,
): AudioWording[] {
  let peak = 0;
  let clipped = 0;
  for (const channel of channelData)
    for (let index = 0; index < channel.length; index++) {
      if (!Number.isFinite(channel[index]!))
        throw new AudioRefused(name, audioNotNumber(index / sampleRateHz));
    }
  for (let index = 0; index < samples.length; index++) {
    const size = Math.abs(samples[index]!);
    if (size > peak) peak = size;
    if (size >= fullScale) clipped++;
  }
  if (peak < silentPeak) return [audioSilent()];
  if (peak > 1 + 1e-6) return [audioOverRange(peak)];
  return clipped > clippedShare * samples.length ? [audioClipped((100 * clipped) / samples.length)] : [];
}

/** The part from `startSec` to `endSec` (null for the file's own start and end). Throws AudioRefused when it is not there. */
export function cutAudio(audio: Audio, startSec: number | null, endSec: number | null, name: string): Audio {
  if (startSec === null && endSec === null) return audio;
  const [start, end] = [startSec ?? 0, endSec ?? audio.durationSec];
  // Lists round to a hundredth of a second; a part may run over the end by that much.
  if (start < 0 || end <= start || end > audio.durationSec + 0.01 || start >= audio.durationSec)
    throw new AudioRefused(name, audioPartOutside(start, end, audio.durationSec));
  const samples = audio.samples.slice(
    Math.round(start * audio.sampleRateHz),
    Math.round(end * audio.sampleRateHz),
  );
  return { ...audio, samples, durationSec: samples.length / audio.sampleRateHz };
}
