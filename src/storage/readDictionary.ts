import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { promisify } from "node:util";
import { gunzip } from "node:zlib";
import { UserError } from "../messages/userError.ts";
import { dictionaryDamaged } from "../messages/words.ts";

/** One entry of the dictionary that comes with kuromoji (IPADIC), under the names of its own tokens. */
export interface DictionaryEntry {
  readonly surface_form: string;
  readonly pos: string;
  readonly pos_detail_1: string;
  readonly pos_detail_2: string;
  readonly conjugated_form: string;
  readonly basic_form: string;
  readonly reading: string | undefined;
  readonly pronunciation: string | undefined;
  /** Cost of the word in the analyser: lower is commoner, roughly. Whole number from -32768 to 32767. */
  readonly cost: number;
}

/** Left context, right context and cost, 2 bytes each; offset of the features, 4 bytes; little endian. */
const recordBytes = 10;
const costOffset = 4;
const featuresOffset = 6;

const unzip = promisify(gunzip);

/**
 * Every entry of kuromoji's dictionary, in the order of its file. The two files are read as the package's own
 * `src/dict/TokenInfoDictionary.js` documents and writes them (`put`): `tid.dat` holds records of 10 bytes, `tid_pos.dat` the
 * features as text, ended by a zero byte, surface first. Both are padded with zeros. Throws a UserError when they
 * do not fit that.
 */
export async function readDictionary(): Promise<Dictionary> {
  const folder = join(dirname(createRequire(import.meta.url).resolve("kuromoji/package.json")), "dict");
  const [records, features] = await Promise.all(
    ["tid.dat.gz", "tid_pos.dat.gz"].map(async (name) => unpacked(await readFile(join(folder, name)))),
  );
  return parseDictionary(records!, features!);
}

/** In one piece, as long as the archive's last four bytes say (RFC 1952), so that it is in memory once. */
function unpacked(archive: Buffer): Promise<Buffer> {
  return unzip(archive, { chunkSize: Math.max(64, archive.readUInt32LE(archive.length - 4) + 1) });
}

export function parseDictionary(records: Buffer, features: Buffer): Dictionary {
  const most = Math.floor(records.length / recordBytes);
  const starts = new Int32Array(most + 1);
  const costs = new Int16Array(most);
  let next = 0;
  let entries = 0;
  for (; entries < most; entries++) {
    const at = entries * recordBytes;
    const start = records.readInt32LE(at + featuresOffset);
    if (at > 0 && start === 0) break;
    const end = features.indexOf(0, start);
    if (start !== next || end <= start) throw new UserError(dictionaryDamaged(entries), 1);
    next = end + 1;
    if (!hasFields(features, start, end)) throw new UserError(dictionaryDamaged(entries), 1);
    starts[entries] = start;
    starts[entries + 1] = next;
    costs[entries] = records.readInt16LE(at + costOffset);
  }
  return new Dictionary(features, starts.subarray(0, entries + 1), costs.subarray(0, entries));
}

const comma = 0x2c;
const leastFields = 8;

function hasFields(features: Buffer, start: number, end: number): boolean {
  let commas = 0;
  for (let at = start; at < end && commas < leastFields - 1; at++) if (features[at] === comma) commas++;
  return commas === leastFields - 1;
}

/** The entries as the bytes that they were read from: each is put together when it is asked for. */
export class Dictionary implements Iterable<DictionaryEntry> {
  readonly #features: Buffer;
  /** Where each entry begins; one more for the end of the last. */
  readonly #starts: Int32Array;
  readonly #costs: Int16Array;
  #spellings: SpellingTable | null = null;

  constructor(features: Buffer, starts: Int32Array, costs: Int16Array) {
    this.#features = features;
    this.#starts = starts;
    this.#costs = costs;
  }

  get length(): number {
    return this.#costs.length;
  }

  *[Symbol.iterator](): Generator<DictionaryEntry> {
    for (let i = 0; i < this.length; i++) yield this.at(i)!;
  }

  at(index: number): DictionaryEntry | undefined {
    if (!(index >= 0 && index < this.length)) return undefined;
    const fields = this.#features
      .toString("utf8", this.#starts[index], this.#starts[index + 1]! - 1)
      .split(",");
    return {
      surface_form: fields[0]!,
      pos: fields[1]!,
      pos_detail_1: fields[2]!,
      pos_detail_2: fields[3]!,
      conjugated_form: fields[6]!,
      basic_form: fields[7]!,
      reading: fields[8],
      pronunciation: fields[9],
      cost: this.#costs[index]!,
    };
  }

  /** All entries with this spelling, in order. */
  readonly spelt = (surface: string): DictionaryEntry[] => {
    this.#spellings ??= new SpellingTable(this.#features, this.#starts);
    return this.#spellings.find(Buffer.from(surface)).map((index) => this.at(index)!);
  };
}

/** Finds entries by the bytes of their spelling: a table of chains in place of a map of strings. */
class SpellingTable {
  readonly #features: Buffer;
  readonly #starts: Int32Array;
  /** The first entry of each chain and the one after each entry, plus one; 0 ends a chain. */
  readonly #first: Int32Array;
  readonly #next: Int32Array;

  constructor(features: Buffer, starts: Int32Array) {
    const entries = starts.length - 1;
    this.#features = features;
    this.#starts = starts;
    this.#first = new Int32Array(2 ** Math.ceil(Math.log2(entries + 1)));
    this.#next = new Int32Array(entries);
    for (let entry = entries - 1; entry >= 0; entry--) {
      const start = starts[entry]!;
      const place = this.#placeOf(features, start, features.indexOf(comma, start));
      this.#next[entry] = this.#first[place]!;
      this.#first[place] = entry + 1;
    }
  }

  find(surface: Buffer): number[] {
    const found: number[] = [];
    const place = this.#placeOf(surface, 0, surface.length);
    for (let entry = this.#first[place]! - 1; entry >= 0; entry = this.#next[entry]! - 1) {
      const start = this.#starts[entry]!;
      const end = start + surface.length;
      if (this.#features[end] === comma && surface.compare(this.#features, start, end) === 0)
        found.push(entry);
    }
    return found;
  }

  /** By the FNV-1a hash of the bytes (public domain, by Fowler, Noll and Vo). */
  #placeOf(bytes: Buffer, start: number, end: number): number {
    let hash = 0x811c9dc5;
    for (let at = start; at < end; at++) hash = Math.imul(hash ^ bytes[at]!, 0x01000193);
    return (hash >>> 0) & (this.#first.length - 1);
  }
}
