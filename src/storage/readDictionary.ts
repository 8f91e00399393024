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
export async function readDictionary(): Promise<DictionaryEntry[]> {
  const folder = join(dirname(createRequire(import.meta.url).resolve("kuromoji/package.json")), "dict");
  const [records, features] = await Promise.all(
    ["tid.dat.gz", "tid_pos.dat.gz"].map(async (name) => unzip(await readFile(join(folder, name)))),
  );
  return parseDictionary(records!, features!);
}

export function parseDictionary(records: Buffer, features: Buffer): DictionaryEntry[] {
  const entries: DictionaryEntry[] = [];
  const known = new Map<string, string>();
  /** One string for each part of speech and form, which a few hundred thousand entries share. */
  const shared = (text: string) => {
    const first = known.get(text);
    if (first === undefined) known.set(text, text);
    return first ?? text;
  };
  let next = 0;
  for (let at = 0; at + recordBytes <= records.length; at += recordBytes) {
    const start = records.readInt32LE(at + featuresOffset);
    if (at > 0 && start === 0) break;
    const end = features.indexOf(0, start);
    if (start !== next || end <= start) throw new UserError(dictionaryDamaged(at / recordBytes), 1);
    next = end + 1;
    const fields = features.toString("utf8", start, end).split(",");
    if (fields.length < 8) throw new UserError(dictionaryDamaged(at / recordBytes), 1);
    entries.push({
      surface_form: fields[0]!,
      pos: shared(fields[1]!),
      pos_detail_1: shared(fields[2]!),
      pos_detail_2: shared(fields[3]!),
      conjugated_form: shared(fields[6]!),
      basic_form: fields[7]! === fields[0] ? fields[0]! : fields[7]!,
      reading: fields[8],
      pronunciation: fields[9],
      cost: records.readInt16LE(at + costOffset),
    });
  }
  return entries;
}
