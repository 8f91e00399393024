import { createHash } from "node:crypto";
import { mkdir, readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import { chooseLabelSet } from "./chooseLabelSet.ts";
import { type OpenDataset, openDataset } from "./datasets/openDataset.ts";
import type { Utterance } from "./datasets/types.ts";
import { type Chosen, chooseSample } from "./estimates/agreement/chooseSample.ts";
import * as messages from "./messages/marks.ts";
import { UserError } from "./messages/userError.ts";
import { kanaToMorae } from "./phonology/kana.ts";
import type { OnProgress } from "./progress.ts";
import { cutClip } from "./publish/cutClip.ts";
import { type MarkingRow, markingPage } from "./publish/markingPage.ts";
import { writeFileAtomic } from "./storage/atomicFile.ts";
import { makeFolder } from "./storage/makeFolder.ts";
import { recordingReader, refusalOf, workingRateHz } from "./storage/openRecording.ts";
import { type MarkableVowel, readMarkable } from "./storage/readMarkable.ts";
import { keyColumns, keyPathOf, sheetColumns } from "./storage/readMarks.ts";
import { toCsv } from "./storage/writeCsv.ts";

export interface SampleOptions {
  readonly results: string;
  /** Folders of the datasets that were measured: the recordings lie there. */
  readonly datasets: readonly string[];
  readonly out: string;
  /** Where the key goes; null for beside the folder. */
  readonly key: string | null;
  readonly labelSet: string | null;
  readonly n: number;
  readonly seed: number;
  readonly onProgress: OnProgress;
}

export interface SampleRecord {
  readonly sampled: number;
  readonly sheet: string;
  readonly page: string;
  readonly key: string;
  readonly notes: readonly string[];
}

/** Heard before and after the vowel. */
const marginMs = 150;

interface Clip {
  readonly name: string;
  readonly chosen: Chosen<MarkableVowel>;
  readonly wav: Uint8Array;
}

/**
 * Draws a blind sample of short /i, u/ for a person to mark: clips, a sheet and a page that tell nothing of what was
 * decided, and a key apart that does. Recordings stay on this disk.
 */
export async function sampleVowels(options: SampleOptions): Promise<SampleRecord> {
  const { results, out, n, seed } = options;
  const key = options.key ?? keyPathOf(out);
  const vowels = await readMarkable(results);
  if (vowels.length === 0) throw new UserError(messages.nothingToSample());
  const ids = [...new Set(vowels.map(({ dataset }) => dataset))];
  if (options.datasets.length === 0) throw new UserError(messages.datasetFolderNeeded(ids));
  const opened = new Map<string, OpenDataset>();
  try {
    for (const folder of options.datasets) {
      const dataset = await openDataset(folder);
      const { id } = dataset.card;
      opened.get(id)?.tree.close();
      opened.set(id, dataset);
      if (!ids.includes(id)) throw new UserError(messages.datasetNotOfResults(folder, id, ids));
    }
    const labelSets = new Map([...opened.keys()].map((id) => [id, labelSetOf(vowels, id, options.labelSet)]));
    const offered = vowels.filter(({ dataset, labelSet }) => labelSets.get(dataset) === labelSet);
    const chosen = chooseSample(
      offered.map((vowel) => ({ ...vowel, speaker: `${vowel.dataset}/${vowel.speaker}` })),
      n,
      seed,
    );
    await refuseTaken(out, key);
    const { clips, faults } = await cutClips(chosen, opened, options.onProgress);
    await write(out, key, clips);
    const missing = ids.filter((id) => !opened.has(id));
    return {
      sampled: clips.length,
      ...{ sheet: join(out, "sheet.csv"), page: join(out, "listen.html"), key },
      notes: [
        messages.keepKeyApart(key),
        ...(missing.length > 0 ? [messages.datasetsNotSampled(missing)] : []),
        ...(clips.length < n ? [messages.fewerThanAsked(clips.length, n)] : []),
        ...(faults.length > 0 ? [messages.clipsLost(faults.length, faults[0]!)] : []),
      ],
    };
  } finally {
    for (const { tree } of opened.values()) tree.close();
  }
}

function labelSetOf(vowels: readonly MarkableVowel[], id: string, wanted: string | null): string {
  const found = new Set(vowels.filter(({ dataset }) => dataset === id).map(({ labelSet }) => labelSet));
  return chooseLabelSet([...found], id, wanted);
}

/** A filled sheet is somebody's work: nothing is written over. */
async function refuseTaken(out: string, key: string): Promise<void> {
  try {
    await makeFolder(out);
    if ((await readdir(out)).length > 0) throw new UserError(messages.sampleFolderTaken(out));
  } catch (error) {
    if (error instanceof UserError) throw error;
    throw new UserError(
      messages.sampleNotWritten(out, (error as NodeJS.ErrnoException).code ?? String(error)),
    );
  }
  const there = await stat(key).catch(() => null);
  if (there !== null) throw new UserError(messages.sampleKeyTaken(key));
}

/** Clips in the random order of the sample; recordings are read one dataset and file after the other. */
async function cutClips(
  chosen: readonly Chosen<MarkableVowel>[],
  opened: ReadonlyMap<string, OpenDataset>,
  onProgress: OnProgress,
): Promise<{ clips: Clip[]; faults: string[] }> {
  const prefix = sampleName(chosen);
  const places = new Map<string, Utterance>();
  const readers = new Map<string, ReturnType<typeof recordingReader>>();
  for (const [id, { tree, utterances }] of opened) {
    readers.set(id, recordingReader(tree));
    for (const utterance of utterances) places.set(`${id}\u0000${utterance.id}`, utterance);
  }
  const keyOf = ({ token }: Chosen<MarkableVowel>) => `${token.dataset}\u0000${token.utterance}`;
  const order = [...chosen.keys()].sort((a, b) => compare(keyOf(chosen[a]!), keyOf(chosen[b]!)) || a - b);
  const clips: (Clip | null)[] = chosen.map(() => null);
  const faults: string[] = [];
  for (const [done, i] of order.entries()) {
    onProgress({ task: "Cutting clips", done, total: order.length, unit: "clips" });
    const { token } = chosen[i]!;
    const place = places.get(keyOf(chosen[i]!));
    if (place === undefined || place.audio === null) {
      faults.push(`${token.utterance}: no such recording`);
      continue;
    }
    try {
      const { samples } = await readers.get(token.dataset)!(place);
      const wav = cutClip(samples, workingRateHz, token.startMs, token.endMs, marginMs);
      const number = String(i + 1).padStart(String(chosen.length).length, "0");
      clips[i] = { name: `${prefix}-${number}.wav`, chosen: chosen[i]!, wav };
    } catch (error) {
      const refusal = refusalOf(error);
      if (refusal === null) throw error;
      faults.push(`${place.audio}: ${refusal.message}`);
    }
  }
  onProgress({ task: "Cutting clips", done: order.length, total: order.length, unit: "clips" });
  return { clips: countKept(clips.filter((clip) => clip !== null)), faults };
}

/** What could not be cut is missing from its stratum: those that are left stand for it too. */
function countKept(clips: readonly Clip[]): Clip[] {
  const kept = new Map<string, number>();
  for (const { chosen } of clips) kept.set(chosen.stratum, (kept.get(chosen.stratum) ?? 0) + 1);
  return clips.map(({ chosen, ...clip }) => ({
    ...clip,
    chosen: { ...chosen, sampledInStratum: kept.get(chosen.stratum)! },
  }));
}

async function write(out: string, key: string, clips: readonly Clip[]): Promise<void> {
  const rows = clips.map(toRow);
  try {
    await mkdir(join(out, "clips"));
    for (const { name, wav } of clips) await writeFileAtomic(join(out, "clips", name), wav);
    await writeFileAtomic(key, toCsv(keyColumns, clips.map(keyRow)));
    await writeFileAtomic(join(out, "listen.html"), markingPage(rows, rows[0]?.clip ?? "empty"));
    // The byte order mark makes spreadsheets read the kana as UTF-8.
    await writeFileAtomic(join(out, "sheet.csv"), `\ufeff${toCsv(sheetColumns, rows)}`);
  } catch (error) {
    throw new UserError(
      messages.sampleNotWritten(out, (error as NodeJS.ErrnoException).code ?? String(error)),
    );
  }
}

function toRow({ name, chosen, wav }: Clip): MarkingRow {
  const { startMs, endMs, phone, before, after, word, reading, mora } = chosen.token;
  const lengthMs = ((wav.length - 44) / 2 / workingRateHz) * 1000;
  const leadMs = Math.min(marginMs, startMs);
  return {
    ...{ clip: name, word, vowel: phone, before, after },
    kana: reading === null || mora === null ? null : kanaAround(reading, mora),
    wav: Buffer.from(wav).toString("base64"),
    from: leadMs / lengthMs,
    to: (leadMs + endMs - startMs) / lengthMs,
  };
}

function keyRow({ name, chosen }: Clip): object {
  const { token, ...stratum } = chosen;
  const speaker = token.speaker.slice(token.dataset.length + 1);
  return { ...token, clip: name, speaker, ...stratum };
}

/** The mora in brackets among its neighbours: キマ【シ】タ. */
export function kanaAround(reading: string, mora: number): string | null {
  const { morae } = kanaToMorae(reading);
  if (morae[mora] === undefined) return null;
  const kana = (from: number, to: number) =>
    morae
      .slice(Math.max(0, from), to)
      .map((one) => one.kana)
      .join("");
  return `${kana(mora - 3, mora)}【${morae[mora].kana}】${kana(mora + 1, mora + 4)}`;
}

/** Clips of two samples never share a name, so that a sheet cannot be read with the key of another. */
function sampleName(chosen: readonly Chosen<MarkableVowel>[]): string {
  const told = chosen.map(({ token }) => [token.dataset, token.labelSet, token.utterance, token.startMs]);
  return createHash("sha256").update(JSON.stringify(told)).digest("hex").slice(0, 6);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
