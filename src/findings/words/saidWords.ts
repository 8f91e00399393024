import type { HeardWord } from "./corpusWords.ts";
import { vowelsOf, type WordVowel } from "./environment.ts";
import type { HeardIndex, TimesHeard } from "./heardIndex.ts";
import { kanaOfSound, type Sound, soundOf } from "./sound.ts";

/** A place in a recording where a word was said, with the morae whose vowel was marked devoiced, and those marked voiced. */
export interface SaidClip {
  readonly dataset: string;
  readonly utterance: string;
  readonly speaker: string;
  readonly startMs: number;
  readonly endMs: number;
  readonly devoiced: readonly number[];
  readonly voiced: readonly number[];
}

/** All the times that one word was said, added up; small enough to travel with a page. */
export interface SaidWord {
  readonly surface: string;
  readonly kana: string;
  readonly speakers: number;
  /** One entry a vowel whose mark is evidence, by its mora. */
  readonly marks: readonly {
    readonly mora: number;
    readonly tokens: number;
    readonly devoiced: number;
    readonly speakers: number;
  }[];
  /** One a speaker, at most `clipsEach`. */
  readonly clips: readonly SaidClip[];
}

const clipsEach = 4;

/** The words of a corpus, most speakers first, then by kana and spelling. */
export function saidWords(heard: HeardIndex): SaidWord[] {
  const said = [...heard.values()].map(addedUp);
  const order = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
  return said.sort((a, b) => b.speakers - a.speakers || order(a.kana, b.kana) || order(a.surface, b.surface));
}

function addedUp({ surface, sound, voices, firsts, marks }: TimesHeard): SaidWord {
  return {
    surface,
    kana: kanaOfSound(sound),
    speakers: voices.size,
    marks: [...marks]
      .sort(([a], [b]) => a - b)
      .map(([mora, { tokens, devoiced, voices: own }]) => ({ mora, tokens, devoiced, speakers: own.size })),
    clips: firsts.slice(0, clipsEach).map(clipOf),
  };
}

function clipOf({ dataset, utterance, speaker, startMs, endMs, devoiced }: HeardWord): SaidClip {
  const morae = (wanted: boolean) =>
    [...devoiced].filter(([, mark]) => mark === wanted).map(([mora]) => mora);
  return {
    ...{ dataset, utterance, speaker, startMs, endMs },
    ...{ devoiced: morae(true), voiced: morae(false) },
  };
}

/** A said word with its sound and vowels worked out, for many look-ups. */
export interface IndexedWord {
  readonly word: SaidWord;
  readonly sound: Sound;
  readonly vowels: readonly WordVowel[];
}

export function indexSaid(said: readonly SaidWord[]): IndexedWord[] {
  return said.flatMap((word) => {
    const sound = soundOf(word.kana);
    return sound === null ? [] : [{ word, sound, vowels: vowelsOf(sound, null) }];
  });
}

/**
 * The words of a corpus that serve best to hear what a vowel does: for each kind of surroundings up to `each` words with
 * most speakers, at most `most` in all. Words none of whose vowels may be devoiced come last.
 */
export function wordsToHear(said: readonly SaidWord[], each: number, most: number): SaidWord[] {
  const found = new Map<string, number>();
  const chosen = new Set<SaidWord>();
  const rest: SaidWord[] = [];
  for (const { word, vowels } of indexSaid(said)) {
    const marked = new Set(word.marks.map(({ mora }) => mora));
    const places = vowels
      .filter(({ devoiceable, mora }) => devoiceable && marked.has(mora))
      .map(({ vowel, before, after }) => `${vowel} ${before} ${after}`);
    if (places.some((place) => (found.get(place) ?? 0) < each)) {
      chosen.add(word);
      for (const place of places) found.set(place, (found.get(place) ?? 0) + 1);
    } else rest.push(word);
  }
  return [...chosen, ...rest].slice(0, most);
}
