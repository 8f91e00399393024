import { extractFeatures } from "../alignment/features.ts";
import { addToSpeaker, createSpeakerMoments } from "../alignment/observations.ts";
import { analyseVoicing } from "../measures/acoustics/voicingFrames.ts";
import { contentKey } from "../storage/contentCache.ts";
import { type Recording, recordingReader, refusalOf } from "../storage/openRecording.ts";
import type { OrderOf, RecordingRef } from "./orders.ts";
import { type HeardRecording, type HearPart, type Sound, type SoundPart, soundKey } from "./parts.ts";
import type { ShardTools } from "./shardTools.ts";

/** What a worker answers: under which key the shard was kept, and the recordings' hashes that it did not know. */
export interface HearAnswer {
  readonly key: string;
  readonly hashes: readonly (string | null)[];
}

/** The key of a shard whose recordings' contents are known. */
export function hearKey(code: string, recordings: readonly (RecordingRef | null)[]): string {
  return contentKey(
    "hear",
    code,
    JSON.stringify(
      recordings.map(
        (one) => one && [one.audio, one.hash, one.audioStartSec, one.audioEndSec, one.features, one.voicing],
      ),
    ),
  );
}

/** Decodes a shard's recordings and keeps what the aligner and the measures hear of them. */
export async function hearShard(
  { code, recordings }: OrderOf<"hear">,
  { cache, files, pause, scratch }: ShardTools,
): Promise<HearAnswer> {
  const hashes = recordings.map((one) => one && files.hash(one.file));
  const known = recordings.map((one, i) => one && { ...one, hash: hashes[i]! });
  const key = hearKey(code, known);
  if (cache.has(key) && cache.has(soundKey(key))) return { key, hashes };
  const heard: (HeardRecording | null)[] = [];
  const sounds: (Sound | null)[] = [];
  const decoded: (Recording | null)[] = [];
  const read = recordingReader(files.of(known));
  for (const one of known) {
    await pause();
    const found = one === null ? null : await hear(one, read);
    heard.push(found?.heard ?? null);
    sounds.push(found?.sound ?? null);
    decoded.push(found?.recording ?? null);
  }
  scratch?.keep(key, decoded);
  cache.set(soundKey(key), sounds satisfies SoundPart);
  cache.set(key, heard satisfies HearPart);
  return { key, hashes };
}

async function hear(
  recording: RecordingRef,
  read: ReturnType<typeof recordingReader>,
): Promise<{ heard: HeardRecording; sound: Sound | null; recording: Recording | null }> {
  const hash = recording.hash!;
  try {
    const found = await read(recording);
    const { samples } = found;
    const features = recording.features ? extractFeatures(samples) : null;
    const voicing = recording.voicing ? analyseVoicing(samples) : null;
    const moments = features === null ? null : createSpeakerMoments();
    if (features !== null) addToSpeaker(moments!, features);
    const durationMs = (samples.length / 16_000) * 1000;
    return {
      heard: { hash, durationMs, moments, refusal: null },
      sound: { features, voicing },
      recording: found,
    };
  } catch (error) {
    const refusal = refusalOf(error);
    if (refusal === null) throw error;
    return { heard: { hash, durationMs: 0, moments: null, refusal }, sound: null, recording: null };
  }
}
