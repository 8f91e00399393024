import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import type { DatasetCard } from "../datasets/types.ts";
import { clipsForbidden, clipsNeedFolder, clipsUnreadable } from "../messages/publish.ts";
import { openRecordings } from "../storage/datasetRecordings.ts";
import { openDatabase } from "../storage/duckdb.ts";
import { cutClip } from "./cutClip.ts";
import { type ExampleToken, exampleTokens } from "./exampleTokens.ts";
import type { ShownVerdict } from "./readVerdicts.ts";
import { clipKey, ruleTokens } from "./ruleClips.ts";
import { clipCards } from "./tokenCardClips.ts";

/** A published clip of a token. */
export interface Clip extends ExampleToken {
  /** Address of the file, relative to the site's source. */
  readonly file: string;
  /** Its card: address of the picture, likewise, and what it says. */
  readonly card: { readonly file: string; readonly alt: string };
}

export interface Clips {
  readonly clips: readonly Clip[];
  /** Why there are none, or fewer, in whole sentences; each names its dataset. */
  readonly reasons: readonly string[];
}

/** Where the recordings of a dataset lie, by dataset id. */
export type AudioFolders = Readonly<Record<string, string>>;

/** Keeps tokens of at most `limit` utterances: what an excerpt allows. */
export function withinExcerpt(tokens: readonly ExampleToken[], limit: number): ExampleToken[] {
  const allowed = new Set<string>();
  return tokens.filter(({ utterance }) => {
    if (allowed.size < limit) allowed.add(utterance);
    return allowed.has(utterance);
  });
}

async function clipsOf(
  card: DatasetCard,
  results: string,
  folder: string,
  root: string,
  verdicts: readonly ShownVerdict[],
): Promise<Clips> {
  const recordings = await openRecordings(folder);
  const connection = await openDatabase(":memory:", 256);
  const clips: Clip[] = [];
  const faults: string[] = [];
  const { read } = recordings;
  try {
    const found = [
      ...(await exampleTokens(connection, results, card.id)),
      ...(await ruleTokens(connection, results, card.id, verdicts)),
    ];
    const tokens = withinExcerpt(found, card.redistribution.utterances ?? Number.POSITIVE_INFINITY);
    const draw = await clipCards(connection, results, read);
    const made = new Map<string, Pick<Clip, "file" | "card">>();
    for (const token of tokens) {
      const known = made.get(clipKey(token));
      if (known !== undefined) {
        clips.push({ ...token, ...known });
        continue;
      }
      try {
        const audio = await read(token);
        const name = `data/clips/${card.id}-${String(made.size + 1).padStart(2, "0")}`;
        const clip = cutClip(audio.samples, audio.sampleRateHz, token.startMs, token.endMs);
        const { svg, alt } = await draw(token);
        await writeFile(path.join(root, `${name}.wav`), clip);
        await writeFile(path.join(root, `${name}.svg`), svg);
        const files = { file: `${name}.wav`, card: { file: `${name}.svg`, alt } };
        made.set(clipKey(token), files);
        clips.push({ ...token, ...files });
      } catch (error) {
        faults.push(error instanceof Error ? error.message : String(error));
      }
    }
  } finally {
    connection.closeSync();
    recordings.close();
  }
  const reasons = faults.length === 0 ? [] : [clipsUnreadable(card.name, faults.length, faults[0]!)];
  return { clips, reasons };
}

/**
 * Cuts examples of findings and of `verdicts` to hear, each sound once, and lays them into the site's source, as far as each dataset's licence goes and its recordings
 * are at hand; says why where it does not. Recordings are only read.
 */
export async function makeClips(
  cards: readonly DatasetCard[],
  results: string,
  folders: AudioFolders,
  root: string,
  verdicts: readonly ShownVerdict[] = [],
): Promise<Clips> {
  const clips: Clip[] = [];
  const reasons: string[] = [];
  await mkdir(path.join(root, "data/clips"), { recursive: true });
  for (const card of cards) {
    const folder = folders[card.id];
    if (card.audioHours === null) continue;
    if (card.redistribution.kind === "none")
      reasons.push(clipsForbidden(card.name, card.redistribution.note));
    else if (folder === undefined) reasons.push(clipsNeedFolder(card.name, card.id));
    else {
      const made = await clipsOf(card, results, folder, root, verdicts);
      clips.push(...made.clips);
      reasons.push(...made.reasons);
    }
  }
  return { clips, reasons };
}
