import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parse } from "csv-parse/sync";

/** The built-in demo as it lies in the repository. */
export const demoFolder = fileURLToPath(new URL("../../../data/demo", import.meta.url));

export interface Line {
  readonly id: string;
  readonly speaker: string;
  readonly audio: string;
  readonly text: string;
  readonly reading: string;
  readonly accentReading: string;
}

export interface TruthRow {
  readonly phone: string;
  readonly startMs: number;
  readonly endMs: number;
  readonly voicedShare: number;
  readonly ruleDevoiced: boolean;
  readonly flipped: boolean;
}

export interface LabelRow {
  readonly startSec: number;
  readonly endSec: number;
  readonly phone: string;
}

export function readTranscript(): Line[] {
  return readTable<Line>("transcript.tsv");
}

/** Rows of the truth file by utterance, in their order. */
export function readTruth(): Map<string, TruthRow[]> {
  const byUtterance = new Map<string, TruthRow[]>();
  for (const row of readTable<Record<string, string>>("truth.tsv")) {
    const rows = byUtterance.get(row.id!) ?? [];
    if (Number(row.index) !== rows.length)
      throw new Error(`truth.tsv: ${row.id} jumps to phone ${row.index}`);
    rows.push({
      phone: row.phone!,
      startMs: Number(row.startMs),
      endMs: Number(row.endMs),
      voicedShare: Number(row.voicedShare),
      ruleDevoiced: row.ruleDevoiced === "1",
      flipped: row.flipped === "1",
    });
    byUtterance.set(row.id!, rows);
  }
  return byUtterance;
}

export function readLabels({ speaker, id }: Line): LabelRow[] {
  const text = readFileSync(join(demoFolder, "labels", speaker, `${id}.lab`), "utf8");
  return text
    .trimEnd()
    .split("\n")
    .map((line) => {
      const [start, end, phone] = line.split(" ");
      return { startSec: Number(start), endSec: Number(end), phone: phone! };
    });
}

/** Paths of all files below a folder of the demo, relative to the demo. */
export function listFiles(folder: string): string[] {
  const entries = readdirSync(join(demoFolder, folder), { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(demoFolder.length + 1));
}

export function sizeOf(path: string): number {
  return statSync(join(demoFolder, path)).size;
}

/** Sample rate, channels, bits and samples as a FLAC's STREAMINFO block says (RFC 9639, section 8.2). */
export function readStreamInfo(path: string) {
  const bytes = readFileSync(join(demoFolder, path));
  if (bytes.toString("latin1", 0, 4) !== "fLaC" || (bytes[4]! & 0x7f) !== 0)
    throw new Error(`${path}: no FLAC`);
  const packed = bytes.readBigUInt64BE(18);
  return {
    sampleRateHz: Number(packed >> 44n),
    channels: Number((packed >> 41n) & 7n) + 1,
    bitsPerSample: Number((packed >> 36n) & 31n) + 1,
    samples: Number(packed & 0xfffffffffn),
  };
}

/** Items by key, in their order. */
export function groupBy<Item>(items: readonly Item[], keyOf: (item: Item) => string): Map<string, Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group === undefined) groups.set(keyOf(item), [item]);
    else group.push(item);
  }
  return groups;
}

function readTable<Row>(file: string): Row[] {
  return parse(readFileSync(join(demoFolder, file), "utf8"), { columns: true, delimiter: "\t" });
}
