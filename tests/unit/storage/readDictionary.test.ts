import kuromoji, { type IpadicFeatures, type Tokenizer } from "kuromoji";
import { beforeAll, describe, expect, test } from "vitest";
import { dictionaryDamaged } from "../../../src/messages/words.ts";
import { loadTokenizer } from "../../../src/storage/loadTokenizer.ts";
import {
  type DictionaryEntry,
  parseDictionary,
  readDictionary,
} from "../../../src/storage/readDictionary.ts";

describe("readDictionary", () => {
  let entries: DictionaryEntry[];
  beforeAll(async () => {
    entries = [...(await readDictionary())];
  }, 60_000);

  test("reads every entry: the 392,126 words of IPADIC 2.7.0 in kuromoji 0.1.2, as its own map counts them", () => {
    expect(entries).toHaveLength(392_126);
  });

  test("agrees with the analyser's own look-up, entry by entry, on 2,000 spellings", async () => {
    const tokenizer = await loadTokenizer();
    const bySurface = group(entries);
    const surfaces = [...bySurface.keys()].filter((_, i) => i % Math.floor(bySurface.size / 2000) === 0);
    const line = (entry: DictionaryEntry | ReturnType<typeof tokenizer.entries>[number]) =>
      [
        entry.surface_form,
        entry.pos,
        entry.pos_detail_1,
        entry.pos_detail_2,
        entry.basic_form,
        entry.reading,
        entry.pronunciation,
      ].join();
    for (const surface of surfaces)
      expect(bySurface.get(surface)!.map(line).sort()).toEqual(tokenizer.entries(surface).map(line).sort());
    expect(surfaces.length).toBeGreaterThanOrEqual(2000);
  }, 60_000);

  test("finds the entries of a spelling, in order, and none of one that only begins so", async () => {
    const dictionary = await readDictionary();
    const bySurface = group(entries);
    expect(dictionary.length).toBe(entries.length);
    for (const surface of [...bySurface.keys()].filter((_, i) => i % 499 === 0))
      expect(dictionary.spelt(surface)).toEqual(bySurface.get(surface));
    expect(dictionary.spelt("東京")).not.toEqual([]);
    expect(dictionary.spelt("東京特許許可局局員")).toEqual([]);
    expect(dictionary.spelt("")).toEqual([]);
    expect(dictionary.at(entries.length)).toBeUndefined();
  }, 60_000);

  test("gives the costs that the analyser itself reads", async () => {
    const tokenizer = await new Promise<Tokenizer<IpadicFeatures>>((resolve, reject) =>
      kuromoji
        .builder({ dicPath: "node_modules/kuromoji/dict" })
        .build((error, built) => (error ? reject(error) : resolve(built))),
    );
    const { dictionary } = tokenizer.token_info_dictionary as unknown as {
      dictionary: { getShort(index: number): number };
    };
    for (let at = 0; at < entries.length; at += 997)
      expect(entries[at]!.cost).toBe(dictionary.getShort(at * 10 + 4));
    expect(new Set(entries.map(({ cost }) => cost)).size).toBeGreaterThan(1000);
  }, 60_000);
});

function group(entries: readonly DictionaryEntry[]): Map<string, DictionaryEntry[]> {
  const bySurface = new Map<string, DictionaryEntry[]>();
  for (const entry of entries)
    bySurface.set(entry.surface_form, [...(bySurface.get(entry.surface_form) ?? []), entry]);
  return bySurface;
}

test("parseDictionary refuses files that do not fit together", () => {
  const records = Buffer.alloc(20);
  records.writeInt32LE(3, 6);
  expect(() => parseDictionary(records, Buffer.from("a,b\0"))).toThrow(dictionaryDamaged(0));
  expect(() => parseDictionary(Buffer.alloc(10), Buffer.from("a,b\0"))).toThrow(dictionaryDamaged(0));
});
