import { describe, expect, test } from "vitest";
import type { Utterance } from "../../../src/datasets/types.ts";
import { cutShards } from "../../../src/shards/cutShards.ts";

function utterances(count: number, audioOf: (i: number) => string = (i) => `${i}.wav`): Utterance[] {
  return Array.from({ length: count }, (_, i) => ({
    ...{ dataset: "d", id: `utterance-${i}`, speaker: "s", style: null, text: "あ", reading: null },
    ...{ accentReading: null, audio: audioOf(i), audioStartSec: null, audioEndSec: null, labels: [] },
    ...{ file: "list", line: i + 1 },
  }));
}

const idsOf = (list: readonly Utterance[], size: number) =>
  cutShards(list, size).map((shard) => shard.utterances.value.map(({ id }) => id).join());

describe("cutShards(utterances, size)", () => {
  test("leaves no utterance out, keeps their order, and counts places", () => {
    const list = utterances(1000);
    const shards = cutShards(list, 32);
    expect(shards.flatMap((shard) => shard.utterances.value)).toEqual(list);
    expect(shards.map(({ index }) => index)).toEqual(shards.map((_, i) => i));
    for (const { first, count, utterances: own } of shards)
      expect(own.value).toEqual(list.slice(first, first + count));
  });

  test("makes shards of about the size, none beyond a quarter and twice of it", () => {
    const sizes = cutShards(utterances(20_000), 32).map((shard) => shard.count);
    expect(20_000 / sizes.length).toBeGreaterThan(24);
    expect(20_000 / sizes.length).toBeLessThan(40);
    expect(Math.min(...sizes.slice(0, -1))).toBeGreaterThanOrEqual(8);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(64);
  });

  test("moves only the cuts nearby when utterances come in at the start, or one goes", () => {
    const list = utterances(2000);
    const before = new Set(idsOf(list, 32));
    const added = idsOf(
      [...utterances(3, () => "new.wav").map((u, i) => ({ ...u, id: `new-${i}` })), ...list],
      32,
    );
    const removed = idsOf(list.toSpliced(1000, 1), 32);
    for (const after of [added, removed])
      expect(after.filter((ids) => !before.has(ids)).length).toBeLessThanOrEqual(4);
  });

  test("does not part the utterances of one recording, but for very long ones", () => {
    const inFives = cutShards(
      utterances(1000, (i) => `${Math.floor(i / 5)}.wav`),
      16,
    );
    for (const { first } of inFives) expect(first % 5).toBe(0);
    const one = cutShards(
      utterances(1000, () => "all.wav"),
      16,
    ).map((shard) => shard.count);
    expect(Math.max(...one)).toBeLessThanOrEqual(8 * 16);
  });

  test("takes nothing apart into nothing", () => {
    expect(cutShards([], 32)).toEqual([]);
    expect(cutShards(utterances(3), 1).length).toBe(3);
  });
});
