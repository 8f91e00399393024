import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { createSpeakerMoments } from "./alignment/observations.ts";
import type { ListedDataset } from "./datasets/openDataset.ts";
import type { Problem } from "./datasets/types.ts";
import { recordingTooLongFor } from "./messages/hearing.ts";
import type { ReadShard } from "./readShards.ts";
import { codeOf } from "./shards/codeOf.ts";
import { countIn } from "./shards/cutShards.ts";
import type { HearAnswer } from "./shards/hearShard.ts";
import type { RecordingRef } from "./shards/orders.ts";
import { Packed } from "./shards/packed.ts";
import { type HeardRecording, type HearPart, requirePart, soundKey } from "./shards/parts.ts";
import { recordingProblem, setAside } from "./shards/shardRows.ts";
import type { ShardWork } from "./shardWork.ts";
import type { Moments } from "./signals/normalise.ts";
import { contentKey } from "./storage/contentCache.ts";
import { hashBytes, isSettled, stampOf } from "./storage/fileStamps.ts";

/** A shard whose recordings were heard. */
export interface HeardShard extends ReadShard {
  /** Key of its `HearPart`. */
  readonly hear: string;
  /** By place in the shard; null for what is not to be heard. */
  readonly recordings: Packed<readonly (RecordingRef | null)[]>;
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
  dataset: ListedDataset,
  shards: readonly ReadShard[],
  work: ShardWork,
): Promise<HeardDataset> {
  const { orders } = work;
  const aligning = shards.some(({ unlabelled }) => unlabelled.includes(true));
  const heard: HeardShard[] = [];
  const moments = new Map<string, Moments>();
  const problems: Problem[] = [];
  const total = countIn(shards);
  const task = `Listening to ${dataset.card.id}`;
  for await (const { read, found, failed } of work.map(task, total, shards, async (one) => {
    const done = await orders.attempt(() => hearOne(dataset, one, aligning, work));
    return { read: one, found: done.part, failed: done.failed, utterances: one.count };
  })) {
    if (found === null) {
      problems.push(...setAside(read, "Listening", failed));
      continue;
    }
    const { shard, part } = found;
    const [utterances, recordings] = [shard.utterances.value, shard.recordings.value];
    for (const [place, one] of part.entries()) {
      const utterance = utterances[place]!;
      if (isTooLong(shard, place, one)) {
        const wording = recordingTooLongFor(one!.durationMs / 1000, shard.morae[place]!);
        problems.push(recordingProblem(utterance, wording, true));
        continue;
      }
      if (one?.moments) addMoments(moments, utterance.speaker, one.moments);
      if (one?.refusal && recordings[place]!.features)
        problems.push(recordingProblem(utterance, one.refusal, true));
    }
    heard.push(shard);
  }
  return { shards: heard, moments, problems };
}

async function hearOne(
  dataset: ListedDataset,
  shard: ReadShard,
  aligning: boolean,
  { orders, unpacked }: ShardWork,
): Promise<{ shard: HeardShard; part: HearPart }> {
  const code = codeOf("hear");
  const wanted = shard.utterances.value.map((_, place) =>
    recordingAt(dataset, shard, place, aligning, unpacked),
  );
  const files = wanted.flatMap((one) => (one === null || one.hash !== null ? [] : [one.file]));
  const name = orders.use(answerKey(code, wanted));
  let answer = orders.cache.get<HearAnswer>(name);
  let part = answer && orders.cache.has(soundKey(answer.key)) ? orders.cache.get<HearPart>(answer.key) : null;
  if (answer === null || part === null) {
    orders.cache.delete(name);
    const since = Date.now();
    unpackMembers(dataset, wanted, unpacked);
    const order = { kind: "hear", cache: orders.cache.folder, code, recordings: wanted } as const;
    answer = await orders.hear(order, name);
    part = requirePart<HearPart>(orders.cache, answer.key);
    const settled = files.every((file) => isSettled(file, since));
    if (settled && answerKey(code, wanted) === name) orders.cache.set(name, answer);
  }
  const { key, hashes } = answer;
  orders.use(soundKey(orders.use(key)));
  const recordings = new Packed(wanted.map((one, place) => one && { ...one, hash: hashes[place]! }));
  const durationsMs = part.map((one, place) =>
    one === null || one.refusal !== null || isTooLong(shard, place, one) ? null : one.durationMs,
  );
  return { shard: { ...shard, hear: key, recordings, durationsMs }, part };
}

/** Far more than the slowest speech takes, and the longest wait before and after it: hours of silence are not aligned (our choice, no published source). */
const longestSecPerMora = 5;
const longestWaitSec = 60;

/** Whether a recording that is to be aligned cannot be of so short a text. */
function isTooLong(
  { unlabelled, morae }: ReadShard,
  place: number,
  heard: Pick<HeardRecording, "durationMs"> | null,
): boolean {
  const mostSec = longestWaitSec + longestSecPerMora * morae[place]!;
  return unlabelled[place]! && heard !== null && heard.durationMs > 1000 * mostSec;
}

/** Where to find which recordings these were, as long as none of their files is touched: they need not be read then. */
function answerKey(code: string, recordings: readonly (RecordingRef | null)[]): string {
  const stamped = recordings.map(
    (one) =>
      one && [
        ...[one.audio, one.hash ?? stampOf(one.file), one.audioStartSec, one.audioEndSec],
        ...[one.features, one.voicing],
      ],
  );
  return contentKey("heard", code, JSON.stringify(stamped));
}

function recordingAt(
  { tree }: ListedDataset,
  shard: ReadShard,
  place: number,
  aligning: boolean,
  unpacked: string,
): RecordingRef | null {
  const { audio, audioStartSec, audioEndSec } = shard.utterances.value[place]!;
  const features = aligning && (shard.unlabelled[place]! || shard.byHand.value.has(place));
  const voicing = shard.labelled[place]! || shard.unlabelled[place]!;
  if (audio === null || !(features || voicing)) return null;
  const part = { audio, audioStartSec, audioEndSec, features, voicing };
  const onDisk = tree.absolute(audio);
  if (onDisk !== null) return { ...part, file: onDisk, hash: null };
  const hash = hashBytes(tree.read(audio));
  return { ...part, file: join(unpacked, hash), hash };
}

/** Lays members of archives out as files, for whoever decodes them. */
export function unpackMembers(
  { tree }: ListedDataset,
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
