import type { DevoicingTable } from "../../../src/findings/words/devoicingTable.ts";
import { type IndexedWord, indexSaid } from "../../../src/findings/words/saidWords.ts";
import type { Sound } from "../../../src/findings/words/sound.ts";
import type { LookUpData } from "../../../src/publish/wordsSource.ts";
import { type AddressOf, heardWhere } from "../words/heardWhere.ts";

/** What single words are looked up in. */
export interface LookUpCorpus {
  readonly devoicing: DevoicingTable;
  readonly said: readonly IndexedWord[];
  readonly isSaid: (sound: Sound) => boolean;
  readonly addressOf: AddressOf;
  readonly silent: readonly string[];
}

/** Loads chances and words to hear; null for results without drill words. */
export async function loadLookUp(file: {
  readonly href: string;
  readonly json: () => Promise<unknown>;
}): Promise<LookUpCorpus | null> {
  const data = (await file.json()) as LookUpData | null;
  if (data === null) return null;
  const said = indexSaid(data.said);
  const sounds = new Set(said.map(({ sound }) => sound));
  return {
    ...{ devoicing: data.devoicing, said, silent: data.silent },
    addressOf: heardWhere(data.audio, file.href),
    isSaid: (sound) => sounds.has(sound),
  };
}
