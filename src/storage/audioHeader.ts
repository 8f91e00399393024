import { type AudioWording, audioEmpty, audioFormatUnknown, audioWrongExtension } from "../messages/audio.ts";
import { readFlacHeader } from "./audioFlac.ts";
import { readMp3Header } from "./audioMp3.ts";
import { readOpusHeader } from "./audioOpus.ts";
import { AudioRefused } from "./audioRefused.ts";
import { type AudioSource, asciiAt, id3Length } from "./audioSource.ts";
import { readWavHeader } from "./audioWav.ts";

export type AudioFormat = "wav" | "flac" | "mp3" | "opus";

export interface AudioHeader {
  readonly format: AudioFormat;
  readonly sampleRateHz: number;
  readonly channels: number;
  /** Length as the header gives it. */
  readonly durationSec: number;
  /** False when the header gives none and the length was reckoned from the file's size. */
  readonly exact: boolean;
}

const extensions: Readonly<Record<AudioFormat, RegExp>> = {
  wav: /^wave?$/i,
  flac: /^flac$/i,
  mp3: /^mp3$/i,
  opus: /^(opus|ogg|oga)$/i,
};
const names: Readonly<Record<AudioFormat, string>> = {
  wav: "WAV",
  flac: "FLAC",
  mp3: "MP3",
  opus: "Opus in Ogg",
};
const readers = {
  wav: readWavHeader,
  flac: readFlacHeader,
  mp3: readMp3Header,
  opus: readOpusHeader,
} as const;

/** What kind of recording it is, by its content. Throws AudioRefused for an empty or unknown file. */
export function audioFormatOf(source: AudioSource): AudioFormat {
  if (source.sizeBytes === 0) throw new AudioRefused(source.name, audioEmpty());
  const offset = id3Length(source);
  const start = source.readPart(offset, 12);
  const tag = asciiAt(start, 0, 4);
  if ((tag === "RIFF" || tag === "RIFX" || tag === "RF64") && asciiAt(start, 8, 4) === "WAVE") return "wav";
  if (tag === "fLaC") return "flac";
  if (tag === "OggS") return "opus";
  if (start[0] === 0xff && (start[1]! & 0xe6) === 0xe2) return "mp3";
  if (offset > 0) return "mp3";
  const shown = [...start.subarray(0, 4)].map((byte) => byte.toString(16).padStart(2, "0")).join(" ");
  throw new AudioRefused(source.name, audioFormatUnknown(shown));
}

/** Rate, channels and length without decoding. Throws AudioRefused for what cannot be read or is plainly not whole. */
export function readAudioHeader(source: AudioSource): AudioHeader {
  return readers[audioFormatOf(source)](source);
}

/** The remark on a name whose extension is another format's; null when it fits or there is none. */
export function extensionRemark(name: string, format: AudioFormat): AudioWording | null {
  const extension = /\.([A-Za-z0-9]{1,5})$/.exec(name)?.[1];
  return extension === undefined || extensions[format].test(extension)
    ? null
    : audioWrongExtension(extension, names[format]);
}
