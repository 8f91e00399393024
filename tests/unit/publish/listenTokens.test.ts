import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { findTokens, type ListenQuery } from "../../../src/publish/listenSearch.ts";
import { chooseTokens } from "../../../src/publish/listenTokens.ts";
import { flagAt, labelAt, numberAt, readListen } from "../../../src/publish/readListen.ts";
import { tempFolder } from "../../helpers/tempFolder.ts";
import { writeListenResults } from "./listenFixture.ts";

const many = Array.from({ length: 12 }, (_, i) => ({
  utterance: `u${String(i).padStart(2, "0")}`,
  speaker: i < 9 ? "a" : "b",
}));

async function choose(limit: number, first?: ReadonlyMap<string, ReadonlySet<string>>) {
  const folder = tempFolder();
  await writeListenResults(folder, many);
  const out = join(folder, "listen.parquet");
  const chosen = await chooseTokens({ results: folder, out, limit, ...(first ? { first } : {}) });
  const bytes = readFileSync(out);
  return { ...chosen, bytes, table: await readListen(Uint8Array.from(bytes).buffer) };
}

describe("chooseTokens", () => {
  test("takes everything where it is few, and gives back what the tables hold", async () => {
    const { utterances, tokens, table } = await choose(1000);
    expect(utterances.map(({ utterance }) => utterance)).toEqual(many.map(({ utterance }) => utterance));
    expect([...tokens]).toEqual([["d", 96]]);
    expect(table.size).toBe(96);
    expect([...table.counts.place.slice(6, 10)]).toEqual([0, 0, 1, 1]);
    expect(labelAt(table, "word", 12)).toBe("聞く");
    expect(numberAt(table, "devoicedProbability", 3)).toBeCloseTo(0.45, 4);
    expect(numberAt(table, "f0Hz", 7)).toBeNull();
    expect([
      flagAt(table, "devoiced", 7),
      flagAt(table, "devoiced", 5),
      flagAt(table, "devoiced", 4),
    ]).toEqual([true, false, null]);
  });

  test("takes whole utterances within the limit, speaker after speaker in turn, the same ones each time", async () => {
    const one = await choose(32);
    expect(one.table.size).toBe(32);
    expect(one.utterances.map(({ speaker }) => speaker).sort()).toEqual(["a", "a", "b", "b"]);
    const two = await choose(32);
    expect(two.bytes.equals(one.bytes)).toBe(true);
    expect(two.utterances).toEqual(one.utterances);
  });

  test("takes the utterances first that are published anyway", async () => {
    const { utterances } = await choose(16, new Map([["d", new Set(["u05", "u11"])]]));
    expect(utterances.map(({ utterance }) => utterance)).toEqual(["u05", "u11"]);
  });

  test("of results without tokens gives an empty table", async () => {
    const folder = tempFolder();
    const out = join(folder, "listen.parquet");
    expect(await chooseTokens({ results: folder, out, limit: 9 })).toEqual({
      utterances: [],
      tokens: new Map(),
    });
    expect((await readListen(Uint8Array.from(readFileSync(out)).buffer)).size).toBe(0);
  });
});

describe("findTokens", () => {
  const all: ListenQuery = {
    ...{
      dataset: "d",
      labelSet: "s",
      word: "",
      sound: null,
      before: null,
      after: null,
      length: null,
      speaker: null,
    },
    ...{ decision: "any", measure: null, order: "corpus", isMarked: () => false },
  };
  async function find(query: Partial<ListenQuery>): Promise<number[]> {
    const folder = tempFolder();
    await writeListenResults(folder, many.slice(8, 10));
    const out = join(folder, "listen.parquet");
    const { utterances } = await chooseTokens({ results: folder, out, limit: 1000 });
    const table = await readListen(Uint8Array.from(readFileSync(out)).buffer);
    const listed = utterances.map((one) => ({ ...one, clip: null }));
    return [...findTokens(table, listed, { ...all, ...query })];
  }

  test("by sound, what stands around, speaker and decision", async () => {
    expect(await find({ sound: "high-vowel", after: "voiceless", speaker: "a" })).toEqual([1, 3, 5]);
    expect(await find({ sound: "u", after: "pause" })).toEqual([7, 15]);
    expect(await find({ decision: "devoiced" })).toEqual([7, 15]);
    expect(await find({ decision: "doubtful" })).toEqual([3, 11]);
    expect(await find({ decision: "marked", isMarked: (row) => row === 4 })).toEqual([4]);
    expect(await find({ labelSet: "other" })).toEqual([]);
  });

  test("by word: as written, as it sounds, and only the sounds of the word", async () => {
    expect(await find({ word: "菊", speaker: "a" })).toEqual([0, 1, 2, 3]);
    expect(await find({ word: "kukiku", sound: "vowel", speaker: "a" })).toEqual([3, 5, 7]);
    expect(await find({ word: "菊を聞く", speaker: "a", sound: "u" })).toEqual([3, 7]);
    expect(await find({ word: "犬" })).toEqual([]);
  });

  test("by a measured value between bounds; what lacks the measure is not found", async () => {
    expect(await find({ measure: { name: "durationMs", from: 46, to: null } })).toEqual([6, 7, 14, 15]);
    expect(
      await find({ sound: "vowel", measure: { name: "f0Hz", from: null, to: 200 }, speaker: "a" }),
    ).toEqual([1, 3, 5]);
  });

  test("in the order asked for, with what has no such value last", async () => {
    expect(await find({ sound: "vowel", order: "boundary", speaker: "a" })).toEqual([3, 5, 1, 7]);
    expect(await find({ sound: "vowel", order: "longest", speaker: "a" })).toEqual([7, 5, 3, 1]);
    expect(await find({ sound: "vowel", order: "highest", speaker: "a" })).toEqual([5, 3, 1, 7]);
  });
});
