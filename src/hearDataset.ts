import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { createSpeakerMoments } from "./alignment/observations.ts";
import type { OpenDataset } from "./datasets/openDataset.ts";
import type { Problem } from "./datasets/types.ts";
import type { ReadShard } from "./readShards.ts";
import { codeOf } from "./shards/codeOf.ts";
import { hearKey } from "./shards/hearShard.ts";
import type { RecordingRef } from "./shards/orders.ts";
import { type HearPart, requirePart, soundKey } from "./shards/parts.ts";
import { recordingProblem, setAside } from "./shards/shardRows.ts";
import type { ShardWork } from "./shardWork.ts";
import type { Moments } from "./signals/normalise.ts";
import { FileStamps, hashBytes } from "./storage/fileStamps.ts";

/** A shard whose recordings were heard. */
export interface HeardShard extends ReadShard {
  /** Key of its `HearPart`. */
  readonly hear: string;
  /** By place in the shard; null for what is not to be heard. */
  readonly recordings: readonly (RecordingRef | null)[];
  /** Length by place in the shard; null for a recording that cannot be used or is not to be heard. */
  readonly durationsMs: readonly (number | null)[];
}

export interface HeardDataset {
  readonly shards: readonly HeardShard[];
  /** Sums over each speaker's recordings that the aligner hears, in the order of utterances. */
  readonly moments: ReadonlyMap<string, Moments>;
  readonly problems: readonly Problem[];
}

/** Has every recording that will be aligned or measured decoded, and what the later stages hear of it kept. */
export async function hearDataset(
  dataset: OpenDataset,
  shards: readonly ReadShard[],
  work: ShardWork,
): Promise<HeardDataset> {
  const { orders } = work;
  const aligning = shards.some(({ unlabelled }) => unlabelled.includes(true));
  const stamps = new FileStamps(orders.cache, dataset.tree.root);
  orders.use(stamps.key);
  const heard: HeardShard[] = [];
  const moments = new Map<string, Moments>();
  const problems: Problem[] = [];
  const total = dataset.utterances.length;
  const task = `Listening to ${dataset.card.id}`;
  for await (const { read, found, failed } of work.map(task, total, shards, async (one) => {
    const done = await orders.attempt(() => hearOne(dataset, one, aligning, stamps, work));
    return { read: one, found: done.part, failed: done.failed, utterances: one.utterances.length };
  })) {
    if (found === null) {
      problems.push(...setAside(read, "Listening", failed));
      continue;
    }
    const { shard, part } = found;
    for (const [place, one] of part.entries()) {
      const utterance = shard.utterances[place]!;
      if (one?.moments) addMoments(moments, utterance.speaker, one.moments);
      if (one?.refusal && shard.recordings[place]!.features)
        problems.push(recordingProblem(utterance, one.refusal, true));
    }
    heard.push(shard);
  }
  stamps.save();
  return { shards: heard, moments, problems };
}

async function hearOne(
  dataset: OpenDataset,
  shard: ReadShard,
  aligning: boolean,
  stamps: FileStamps,
  { orders, unpacked }: ShardWork,
): Promise<{ shard: HeardShard; part: HearPart }> {
  const code = codeOf("hear");
  const wanted = shard.utterances.map((_, place) =>
    recordingAt(dataset, shard, place, aligning, unpacked, stamps),
  );
  let key = hearKey(code, wanted);
  let recordings = wanted;
  const known = wanted.every((one) => one === null || one.hash !== null);
  let part = known && orders.cache.has(soundKey(key)) ? orders.cache.get<HearPart>(key) : null;
  if (part === null) {
    const since = Date.now();
    unpackMembers(dataset, wanted, unpacked);
    const answer = await orders.hear({ kind: "hear", cache: orders.cache.folder, code, recordings: wanted });
    key = answer.key;
    recordings = wanted.map((one, place) => one && { ...one, hash: answer.hashes[place]! });
    for (const one of recordings) if (one !== null) stamps.remember(one.file, one.hash!, since);
    part = requirePart<HearPart>(orders.cache, key);
  }
  orders.use(soundKey(orders.use(key)));
  const durationsMs = part.map((one) => (one === null || one.refusal !== null ? null : one.durationMs));
  return { shard: { ...shard, hear: key, recordings, durationsMs }, part };
}

function recordingAt(
  { tree }: OpenDataset,
  shard: ReadShard,
  place: number,
  aligning: boolean,
  unpacked: string,
  stamps: FileStamps,
): RecordingRef | null {
  const { audio, audioStartSec, audioEndSec } = shard.utterances[place]!;
  const features = aligning && (shard.unlabelled[place]! || shard.byHand.has(place));
  const voicing = shard.labelled[place]! || shard.unlabelled[place]!;
  if (audio === null || !(features || voicing)) return null;
  const onDisk = tree.absolute(audio);
  const place_ = { audio, audioStartSec, audioEndSec, features, voicing };
  if (onDisk !== null) return { ...place_, file: onDisk, hash: stamps.known(onDisk) };
  const hash = hashBytes(tree.read(audio));
  return { ...place_, file: join(unpacked, hash), hash };
}

/** Lays members of archives out as files, for whoever decodes them. */
export function unpackMembers(
  { tree }: OpenDataset,
  recordings: readonly (RecordingRef | null)[],
  folder: string,
): void {
  for (const one of recordings) {
    if (one === null || tree.absolute(one.audio) !== null || existsSync(one.file)) continue;
    mkdirSync(folder, { recursive: true });
    writeFileSync(one.file, tree.read(one.audio));
  }
}

function addMoments(moments: Map<string, Moments>, speaker: string, own: Moments): void {
  const sums = moments.get(speaker) ?? createSpeakerMoments();
  moments.set(speaker, sums);
  sums.frames += own.frames;
  for (let d = 0; d < own.dims; d++) {
    sums.sum[d]! += own.sum[d]!;
    sums.sumSquares[d]! += own.sumSquares[d]!;
  }
}
