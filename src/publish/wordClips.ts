import { type Zippable, zipSync } from "fflate";
import type { OpenDataset } from "../datasets/openDataset.ts";
import type { Clip, DrillWord } from "../findings/words/describe.ts";
import type { DrillWords } from "../findings/words/drillWords.ts";
import { clipsForbidden } from "../messages/publish.ts";
import { UserError } from "../messages/userError.ts";
import { clipsLeftOut, clipsNone } from "../messages/words.ts";
import { cutAudio, readAudio } from "../storage/readAudio.ts";
import { cutClip } from "./cutClip.ts";
import { levelled } from "./levelled.ts";

/** Speech around a word is kept short, so that the word can be played alone. */
const marginMs = 40;

export interface WordClips {
  /** Path in the zip → bytes of a WAV file. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  /** What was left out and why, in whole sentences. */
  readonly notes: readonly string[];
}

/** Where a clip stands in the zip: words or voices held out lie apart, so that practice does not use them up. */
function clipPath(target: string, number: number, word: DrillWord, clip: Clip, test: boolean): string {
  const safe = (text: string) => text.normalize("NFKC").replace(/[^\p{L}\p{N}-]+/gu, "_");
  const place = `${test ? "test" : "practice"}/${target}`;
  return `${place}/${String(number).padStart(2, "0")}-${safe(word.romaji)}-${safe(clip.speaker)}.wav`;
}

/**
 * The clips of the chosen words that one dataset holds and its licence allows, named and brought to one loudness. Of an
 * excerpt as many recordings are used as may be passed on. Throws a UserError when the licence allows none.
 */
export async function wordClips(words: DrillWords, dataset: OpenDataset): Promise<WordClips> {
  const { card, utterances, tree } = dataset;
  const { kind, note, utterances: limit } = card.redistribution;
  if (kind === "none") throw new UserError(clipsForbidden(card.name, note));
  const placeOf = new Map(utterances.map((utterance) => [utterance.id, utterance]));
  const allowed = new Set<string>();
  const files = new Map<string, Uint8Array>();
  const left = { licence: 0, unreadable: 0 };
  for (const { path, clip } of wanted(words, card.id)) {
    if (allowed.size >= (limit ?? Number.POSITIVE_INFINITY) && !allowed.has(clip.utterance)) {
      left.licence++;
      continue;
    }
    const place = placeOf.get(clip.utterance);
    try {
      if (place === undefined || place.audio === null) throw new Error("no recording");
      const whole = await readAudio(tree.read(place.audio), place.audio);
      const { samples, sampleRateHz } = cutAudio(whole, place.audioStartSec, place.audioEndSec, place.audio);
      const at = (ms: number) => Math.round((ms / 1000) * sampleRateHz);
      const even = levelled(samples, at(clip.startMs - marginMs), at(clip.endMs + marginMs));
      files.set(path, cutClip(even, sampleRateHz, clip.startMs, clip.endMs, marginMs));
      allowed.add(clip.utterance);
    } catch {
      left.unreadable++;
    }
  }
  if (files.size === 0) return { files, notes: [clipsNone(card.name)] };
  const notes =
    left.licence + left.unreadable > 0 ? [clipsLeftOut(card.name, left.licence, left.unreadable)] : [];
  return { files, notes };
}

function wanted(words: DrillWords, dataset: string): { path: string; clip: Clip }[] {
  const heldOut = new Set(words.speakers.heldOut);
  return words.sets.flatMap(({ target, items }) =>
    items.flatMap((item, at) =>
      item.words.flatMap((word) =>
        word.clips
          .filter((clip) => clip.dataset === dataset)
          .map((clip) => {
            const test = item.heldOut || heldOut.has(`${clip.dataset}/${clip.speaker}`);
            return { path: clipPath(target, at + 1, word, clip, test), clip };
          }),
      ),
    ),
  );
}

/** A zip of files with a note on where they come from; the same files give the same bytes. */
export function zipFiles(files: ReadonlyMap<string, Uint8Array>, credits: string): Uint8Array {
  const mtime = new Date(1980, 0, 1);
  const entries: Zippable = { "CREDITS.txt": [new TextEncoder().encode(credits), { mtime }] };
  // Sound hardly shrinks: stored as it is, it opens at once.
  for (const [path, bytes] of files) entries[path] = [bytes, { mtime, level: 0 }];
  return zipSync(entries);
}
