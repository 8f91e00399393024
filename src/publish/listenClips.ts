import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import type { DatasetCard } from "../datasets/types.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import { clipsForbidden, clipsNeedFolder } from "../messages/publish.ts";
import { openRecordings } from "../storage/datasetRecordings.ts";
import { workingRateHz } from "../storage/openRecording.ts";
import { resampleTo } from "../storage/resample.ts";
import type { AudioFolders } from "./clips.ts";
import { cutClip } from "./cutClip.ts";
import type { ChosenUtterance } from "./listenTokens.ts";

/** Folder of the site that holds whole recordings. */
export const recordingsFolder = "recordings";

export interface ListenClips {
  /** Address of each utterance's recording within the site, by its place; null where there is none. */
  readonly clips: (string | null)[];
  /** Why some are missing, in a sentence by dataset id. */
  readonly silent: Map<string, string>;
}

export interface ListenClipsOptions {
  readonly cards: readonly DatasetCard[];
  readonly utterances: readonly ChosenUtterance[];
  /** Folders of the datasets whose recordings are at hand. */
  readonly folders: AudioFolders;
  /** Utterances of which examples are heard elsewhere in the site, by dataset id: an excerpt holds them already. */
  readonly published: ReadonlyMap<string, ReadonlySet<string>>;
  /** Where the files go. */
  readonly out: string;
}

/**
 * Lays the recordings of the chosen utterances beside the site, whole and at the rate at which they were measured, as
 * far as licences go. Of a file nothing but its sound is carried over.
 */
export async function makeListenClips(options: ListenClipsOptions): Promise<ListenClips> {
  const { cards, utterances, folders } = options;
  const made: ListenClips = { clips: utterances.map(() => null), silent: new Map() };
  const words = interfaceText().listen;
  for (const card of cards) {
    const { id, name, redistribution } = card;
    const own = [...utterances.keys()].filter((i) => utterances[i]!.dataset === id);
    const why = (reason: string) => made.silent.set(id, reason);
    if (own.length === 0) continue;
    if (own.every((i) => utterances[i]!.audio === null)) why(words.noRecordings(name));
    else if (redistribution.kind === "none") why(clipsForbidden(name, redistribution.note));
    else if (folders[id] === undefined) why(clipsNeedFolder(name, id));
    else {
      const allowed = allowedOf(card, own, options);
      const faults = await writeClips(id, allowed, folders[id], options, made);
      if (faults.length > 0) why(words.unreadable(name, faults.length, faults[0]!));
      else if (allowed.length < own.length) why(words.excerptOnly(name, allowed.length, redistribution.note));
    }
  }
  return made;
}

/** Places whose recordings may be published: of an excerpt those already heard elsewhere, then the first others. */
function allowedOf(
  { id, redistribution }: DatasetCard,
  own: readonly number[],
  { utterances, published }: ListenClipsOptions,
): number[] {
  const heard = published.get(id) ?? new Set<string>();
  const isHeard = (i: number) => heard.has(utterances[i]!.utterance);
  const most = redistribution.utterances ?? Number.POSITIVE_INFINITY;
  const others = own.filter((i) => !isHeard(i) && utterances[i]!.audio !== null);
  return [...own.filter(isHeard), ...others.slice(0, Math.max(0, most - heard.size))];
}

async function writeClips(
  id: string,
  places: readonly number[],
  folder: string,
  { utterances, out }: ListenClipsOptions,
  { clips }: ListenClips,
): Promise<string[]> {
  const faults: string[] = [];
  await mkdir(path.join(out, id), { recursive: true });
  const recordings = await openRecordings(folder);
  try {
    for (const place of places) {
      const name = `${String(place).padStart(4, "0")}.wav`;
      try {
        const { samples, sampleRateHz } = await recordings.read(utterances[place]!);
        const heard = await resampleTo(samples, sampleRateHz, workingRateHz);
        const wholeMs = (1000 * heard.length) / workingRateHz;
        await writeFile(path.join(out, id, name), cutClip(heard, workingRateHz, 0, wholeMs, 0));
        clips[place] = `${recordingsFolder}/${id}/${name}`;
      } catch (error) {
        faults.push(error instanceof Error ? error.message : String(error));
      }
    }
  } finally {
    recordings.close();
  }
  return faults;
}
