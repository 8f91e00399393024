import { codeVersion } from "../storage/contentCache.ts";

const sound = [
  "signals",
  "storage",
  "alignment/features.ts",
  "alignment/observations.ts",
  "measures/acoustics/voicingFrames.ts",
  "messages/audio.ts",
  "messages/fileTree.ts",
  "shards/hearShard.ts",
  "shards/parts.ts",
];
const text = [
  "phonology",
  "alignment",
  "readUtterances.ts",
  "storage/loadTokenizer.ts",
  "storage/loadReader.ts",
  "messages/labels.ts",
  "messages/phonology.ts",
];
const times = ["alignment", "signals", "statistics", "phonology", "shards"];
const rows = [
  ...times,
  "measures",
  "storage",
  "messages/measures.ts",
  "messages/hearing.ts",
  "messages/audio.ts",
];

/** Code that each kind of part hangs on, as places in `src`. */
const places = {
  read: text,
  hear: sound,
  train: times,
  align: times,
  measure: rows,
  label: [...text, ...rows],
};
export type CodeKind = keyof typeof places;

const known = new Map<CodeKind, string>();

/** Stands for the code that makes a kind of part; looked up once, so that one run knows one code. */
export function codeOf(kind: CodeKind): string {
  const version = known.get(kind) ?? codeVersion(places[kind]);
  known.set(kind, version);
  return version;
}
