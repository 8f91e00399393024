import { UserError } from "../messages/userError.ts";
import { AudioRefused } from "./audioRefused.ts";
import { type Audio, cutAudio, readAudio } from "./readAudio.ts";
import { resampleTo } from "./resample.ts";

/** Rate at which recordings are aligned and measured. */
export const workingRateHz = 16_000;

export interface Recording {
  /** Mono, 16 kHz, ±1. */
  readonly samples: Float32Array;
  readonly durationSec: number;
  readonly sampleRateHz: number;
  readonly channelRule: string;
  readonly warnings: Audio["warnings"];
}

/** Where a recording lies and which part of it is meant. */
export interface RecordingPlace {
  readonly audio: string | null;
  readonly audioStartSec: number | null;
  readonly audioEndSec: number | null;
}

export type ReadRecording = (place: RecordingPlace) => Promise<Recording>;

/**
 * Reads recordings of one dataset at the working rate. The file read last is kept, since utterances of one long
 * recording follow one another. Throws AudioRefused for a recording that cannot be used.
 */
export function recordingReader(tree: { read(path: string): Uint8Array }): ReadRecording {
  let kept: { path: string; audio: Audio } | null = null;
  return async ({ audio: path, audioStartSec, audioEndSec }) => {
    if (path === null) throw new Error("no recording to read");
    if (kept?.path !== path) kept = { path, audio: await readAudio(tree.read(path), path) };
    const { audio } = kept;
    const whole = audioStartSec === null && audioEndSec === null;
    const part = whole ? audio : cutAudio(audio, audioStartSec ?? 0, audioEndSec ?? audio.durationSec, path);
    const samples =
      part.sampleRateHz === workingRateHz
        ? part.samples
        : await resampleTo(part.samples, part.sampleRateHz, workingRateHz);
    const { durationSec, sampleRateHz, channelRule, warnings } = part;
    return { samples, durationSec, sampleRateHz, channelRule, warnings };
  };
}

/** The wording of a refusal, or null for an error that is no refusal. */
export function refusalOf(error: unknown): { rule: string; message: string; wayOut: string } | null {
  if (error instanceof AudioRefused) return error.wording;
  return error instanceof UserError
    ? { rule: "recording-unreadable", message: error.message, wayOut: "Fetch the recording again." }
    : null;
}
