import type { Alignment } from "../alignment/alignUtterance.ts";
import type { Features } from "../alignment/features.ts";
import type { Problem } from "../datasets/types.ts";
import type { SpeakerReference } from "../measures/acoustics/learnSpeaker.ts";
import type { SpeakerSample } from "../measures/acoustics/speakerSample.ts";
import type { VoicingFrames } from "../measures/acoustics/voicingFrames.ts";
import type { ReadResult } from "../readUtterances.ts";
import type { Moments } from "../signals/normalise.ts";
import { type ContentCache, contentKey } from "../storage/contentCache.ts";
import type { TableRows } from "../storage/resultsWriter.ts";

/** A shard's utterances as they were read. */
export interface ReadPart {
  /** Stands for all that later work depends on: not for the lines that the utterances are listed in. */
  readonly digest: string;
  readonly results: readonly ReadResult[];
}

/** What was found out of one recording; its sound is kept apart, in a `SoundPart`. */
export interface HeardRecording {
  readonly hash: string;
  readonly durationMs: number;
  /** Sums for the speaker's normalisation; null when the aligner does not need the recording. */
  readonly moments: Moments | null;
  /** Why the recording cannot be used; null when it can. */
  readonly refusal: { readonly rule: string; readonly message: string; readonly wayOut: string } | null;
}
/** By place in the shard; null for an utterance without a recording. */
export type HearPart = readonly (HeardRecording | null)[];

export interface Sound {
  readonly features: Features | null;
  readonly voicing: VoicingFrames | null;
}
/** By place in the shard; null where there is no recording, or none that can be used. */
export type SoundPart = readonly (Sound | null)[];

/** By place in the shard; null for a recording too short for its text. */
export type AlignPart = ReadonlyMap<number, Alignment | null>;
export type VoicesPart = ReadonlyMap<number, SpeakerSample>;
export type LearnPart = readonly [string, SpeakerReference][];

export interface MeasurePart extends TableRows {
  readonly problems: readonly Problem[];
  /**
   * Phones in the label files, when there are no recordings, and those that the aligner placed, less those of labels
   * that were read but do not fit their recording.
   */
  readonly phones: number;
}

/** The key of a shard's sound, which belongs to a `HearPart`. */
export function soundKey(hearKey: string): string {
  return contentKey("sound", hearKey);
}

/** A part that should be there is gone or damaged: the shard that makes it is to be done again. */
export class DamagedPart extends Error {
  readonly key: string;

  constructor(key: string) {
    super(`part ${key} is missing or damaged`);
    this.name = "DamagedPart";
    this.key = key;
  }
}

export function readResults(cache: ContentCache, key: string): readonly ReadResult[] {
  return requirePart<ReadPart>(cache, key).results;
}

export function requirePart<T>(cache: ContentCache, key: string): T {
  const part = cache.get<T>(key);
  if (part === null) throw new DamagedPart(key);
  return part;
}
