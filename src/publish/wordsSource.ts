import { readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import * as v from "valibot";
import type { DatasetCard } from "../datasets/types.ts";
import type { DrillWords } from "../findings/words/drillWords.ts";
import { type PackedWords, packDevoicing, packWords } from "../findings/words/packWords.ts";
import type { SaidWord } from "../findings/words/saidWords.ts";

export interface UtteranceName {
  readonly dataset: string;
  readonly utterance: string;
}

/** Address of each recording in the site, by `dataset/utterance`; and why others are silent, a sentence each. */
export interface WordAudio {
  readonly audio: Readonly<Record<string, string>>;
  readonly silent: readonly string[];
}

/** `words.json` of the site. */
export interface WordsData extends PackedWords, WordAudio {
  readonly citations: readonly string[];
  /** Name and version. */
  readonly software: string;
}

/** `look-up.json` of the site. */
export interface LookUpData extends WordAudio {
  readonly devoicing: PackedWords["devoicing"];
  readonly said: readonly SaidWord[];
}

/** Recordings that words are heard from, of each dataset at most. */
const mostRecordings = 300;
/** The page of single words must load nothing larger than 200 kB. */
const mostLookUpBytes = 170_000;
const clipsOfWord = 3;

export const recordingName = ({ dataset, utterance }: UtteranceName) => `${dataset}/${utterance}`;

/**
 * Recordings that drill words should be heard from, listed words first, as far as licences go: of an excerpt those in
 * `published` already, then others up to the limit.
 */
export function wordRecordings(
  words: DrillWords | null,
  cards: readonly DatasetCard[],
  published: readonly UtteranceName[],
): UtteranceName[] {
  if (words === null) return [];
  const wanted = [
    ...words.listing.words.flatMap(({ clips }) => clips.slice(0, clipsOfWord)),
    ...words.said.flatMap(({ clips }) => clips.slice(0, clipsOfWord)),
  ];
  return cards.flatMap(({ id, redistribution }) => {
    if (redistribution.kind === "none") return [];
    const heard = new Set(
      published.filter(({ dataset }) => dataset === id).map(({ utterance }) => utterance),
    );
    const limit = Math.min(
      mostRecordings,
      (redistribution.utterances ?? Number.POSITIVE_INFINITY) - heard.size,
    );
    const more = new Set<string>();
    for (const { dataset, utterance } of wanted)
      if (dataset === id && !heard.has(utterance) && more.size < limit) more.add(utterance);
    return [...more].map((utterance) => ({ dataset: id, utterance }));
  });
}

const listSchema = v.looseObject({
  utterances: v.array(
    v.looseObject({ dataset: v.string(), utterance: v.string(), clip: v.nullable(v.string()) }),
  ),
  datasets: v.array(v.looseObject({ silent: v.nullable(v.string()) })),
});

/** Recordings of the site from the list that the page of single sounds loads. */
async function audioOf(list: string): Promise<WordAudio> {
  const { utterances, datasets } = v.parse(listSchema, JSON.parse(await readFile(list, "utf8")));
  const audio = utterances.flatMap(({ clip, ...name }) =>
    clip === null ? [] : [[recordingName(name), clip]],
  );
  return { audio: Object.fromEntries(audio), silent: datasets.flatMap(({ silent }) => silent ?? []) };
}

/** The places where a word is heard: those in the site first, others for readers whose own machine has the recordings. */
function placesToHear<T extends UtteranceName>(clips: readonly T[], { audio }: WordAudio): T[] {
  const inSite = (clip: T) => audio[recordingName(clip)] !== undefined;
  return [...clips.filter(inSite), ...clips.filter((clip) => !inSite(clip))].slice(0, clipsOfWord);
}

/** Writes what the pages of drill words and of single words load: `words.json` and `look-up.json`; nothing for no words. */
export async function writeWordsSource(
  words: DrillWords | null,
  { data, ...sources }: { readonly data: string } & Pick<WordsData, "citations" | "software">,
): Promise<void> {
  const heard = await audioOf(path.join(data, "listen.json"));
  const write = (file: string, content: unknown) => writeFile(path.join(data, file), JSON.stringify(content));
  await write("words.json", words === null ? null : wordsData(words, heard, sources));
  await write("look-up.json", words === null ? null : lookUpData(words, heard));
}

function wordsData(
  { listing, devoicing, lengths }: DrillWords,
  heard: WordAudio,
  sources: Pick<WordsData, "citations" | "software">,
): WordsData {
  const shown = listing.words.map((word) => ({ ...word, clips: placesToHear(word.clips, heard) }));
  const packed = packWords({ ...listing, words: shown }, devoicing, lengths);
  return { ...packed, ...neededOf(shown, heard), ...sources };
}

/** As many words to hear as fit beside the chances. */
export function lookUpData({ devoicing, said }: DrillWords, heard: WordAudio): LookUpData {
  const table = packDevoicing(devoicing);
  const size = (content: unknown) => Buffer.byteLength(JSON.stringify(content));
  const words = said.map((word) => ({ ...word, clips: placesToHear(word.clips, heard) }));
  let left = mostLookUpBytes - size(table) - size(heard.silent);
  const kept: SaidWord[] = [];
  for (const word of words) {
    left -= size(word) + word.clips.reduce((sum, clip) => sum + recordingBytes(clip, heard), 0);
    if (left < 0) break;
    kept.push(word);
  }
  return { devoicing: table, said: kept, ...neededOf(kept, heard) };
}

/** At most: recordings that several words are heard from are written down once. */
function recordingBytes(clip: UtteranceName, { audio }: WordAudio): number {
  const name = recordingName(clip);
  return audio[name] === undefined ? 0 : Buffer.byteLength(`"${name}":"${audio[name]}",`);
}

/** Only the recordings that these words are heard from. */
function neededOf(
  words: readonly { readonly clips: readonly UtteranceName[] }[],
  { audio, silent }: WordAudio,
): WordAudio {
  const names = new Set(words.flatMap(({ clips }) => clips.map(recordingName)));
  return { audio: Object.fromEntries(Object.entries(audio).filter(([name]) => names.has(name))), silent };
}
