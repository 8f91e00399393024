import { join } from "node:path";
import { type AudioFormat, encodeAudio } from "./encode.ts";
import { analyse } from "./openJTalk.ts";
import { planSpeech } from "./planSpeech.ts";
import { randomFor } from "./random.ts";
import { alignMorae, formatAccentReading, formatReading } from "./reading.ts";
import { speakAsPlanned } from "./speakAsPlanned.ts";
import type { Speaker } from "./speakers.ts";
import { frameMs, synthesise } from "./synthesise.ts";

/** What is known about one phone, because it was made. */
export interface TruePhone {
  readonly phone: string;
  readonly startMs: number;
  readonly endMs: number;
  /** Share of its frames that the synthesiser spoke with voice, 0 to 1. */
  readonly voicedShare: number;
  readonly ruleDevoiced: boolean;
  readonly devoiced: boolean;
}

export interface MadeUtterance {
  readonly id: string;
  readonly speaker: string;
  readonly text: string;
  readonly reading: string;
  readonly accentReading: string;
  /** Path of the recording relative to the dataset. */
  readonly audio: string;
  readonly phones: readonly TruePhone[];
}

/** Folders and choices that are the same for a whole run. */
export interface MakeContext {
  readonly out: string;
  readonly voices: string;
  readonly scratch: string;
  readonly seed: number;
  readonly format: AudioFormat;
}

/** Analyses, plans, speaks and encodes one sentence by one reader. */
export function makeUtterance(
  id: string,
  text: string,
  speaker: Speaker,
  context: MakeContext,
): MadeUtterance {
  const { out, voices, scratch, seed, format } = context;
  const voiceFile = join(voices, `${speaker.voice}.htsvoice`);
  const analysis = analyse(text, voiceFile, scratch);
  const morae = alignMorae(analysis.words, analysis.phones);
  const spoken = join(scratch, "spoken.wav");
  const { planned, traces } = speakAsPlanned(id, {
    plan: (corrections) =>
      planSpeech(analysis.phones, morae, speaker, randomFor(`${seed}/${id}`), corrections),
    speak: (phones, voicingThreshold) =>
      synthesise(phones, { speaker, voiceFile, voicingThreshold }, spoken, scratch),
  });
  const audio = `audio/${speaker.id}/${id}.${format}`;
  encodeAudio(spoken, join(out, audio));
  let frame = 0;
  const phones = planned.map(({ phone, ruleDevoiced, devoiced }, index) => {
    const { frames, voicedShare } = traces[index]!;
    const startMs = frame * frameMs;
    frame += frames;
    return { phone, startMs, endMs: frame * frameMs, voicedShare, ruleDevoiced, devoiced };
  });
  const readings = { reading: formatReading(morae), accentReading: formatAccentReading(morae) };
  return { id, speaker: speaker.id, text, ...readings, audio, phones };
}
