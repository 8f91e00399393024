import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { ReferencePhone } from "../../../src/alignment/boundaryErrors.ts";
import { extractFeatures } from "../../../src/alignment/features.ts";
import type { GraphPart } from "../../../src/alignment/graph.ts";
import { moraeToParts } from "../../../src/alignment/moraeToParts.ts";
import { readLabels } from "../../../src/alignment/readLabels.ts";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import { sharedData } from "../../helpers/sharedDataFolder.ts";
import { loadSamples } from "./loadSamples.ts";
import { type Item, type Material, materialOf } from "./material.ts";

function readTruth(path: string): ReferencePhone[] {
  const { phones, problems } = readLabels(readFileSync(path, "utf8"), "start-end-phone");
  if (phones.length === 0) throw new Error(`${path}: ${problems.map(({ message }) => message).join("; ")}`);
  return phones.map(({ phone, devoiced, startMs, endMs }) => ({ phone, devoiced, startMs, endMs }));
}

async function item(
  id: string,
  speaker: string,
  wav: string,
  lab: string,
  parts: readonly GraphPart[],
): Promise<Item> {
  return { id, speaker, parts, truth: readTruth(lab), features: extractFeatures(await loadSamples(wav)) };
}

/** Synthetic reference speech: `transcript.tsv` (id, speaker, audio, text, reading …), `audio/` and `labels/`. */
export async function readReferenceSpeech(name: string, folder: string): Promise<Material | null> {
  if (!existsSync(join(folder, "transcript.tsv"))) return null;
  const rows = readFileSync(join(folder, "transcript.tsv"), "utf8").trim().split("\n").slice(1);
  const items: Item[] = [];
  for (const row of rows) {
    const [id, speaker, audio, , reading] = row.split("\t") as [string, string, string, string, string];
    const parts = moraeToParts(kanaToMorae(reading).morae);
    items.push(
      await item(id, speaker, join(folder, audio), join(folder, "labels", speaker, `${id}.lab`), parts),
    );
  }
  return materialOf(name, items, true);
}

/** `read-sentences`: real speech, labelled by another aligner. */
export async function readSentences(): Promise<Material | null> {
  const folder = sharedData("read-sentences");
  if (folder === null) return null;
  const items: Item[] = [];
  for (const id of idsOf(folder)) {
    const kana = readFileSync(join(folder, `${id}.txt`), "utf8").trim();
    const parts = moraeToParts(kanaToMorae(kana).morae);
    items.push(await item(id, "reader", join(folder, `${id}.wav`), join(folder, `${id}.lab`), parts));
  }
  return materialOf("read-sentences", items, true);
}

/** `vowel-sequences`: real speech, boundaries placed by hand, no silence at the ends. */
export async function readVowelSequences(): Promise<Material | null> {
  const folder = sharedData("vowel-sequences");
  if (folder === null) return null;
  const items: Item[] = [];
  for (const id of idsOf(folder)) {
    const parts = readTruth(join(folder, `${id}.lab`)).map(({ phone }) => ({ phone }) as GraphPart);
    items.push(await item(id, "speaker", join(folder, `${id}.wav`), join(folder, `${id}.lab`), parts));
  }
  return materialOf("vowel-sequences", items, false);
}

function idsOf(folder: string): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".wav"))
    .map((name) => name.slice(0, -".wav".length))
    .sort();
}
