import type { HeardWord } from "./corpusWords.ts";
import type { Sound } from "./sound.ts";

/** All the times that one word was said, added up: as many words of the corpus as there are, they need little room. */
export interface TimesHeard {
  readonly surface: string;
  readonly sound: Sound;
  readonly tokens: number;
  /** Who said it: dataset and speaker, since speakers of several datasets may bear the same label. */
  readonly voices: ReadonlySet<string>;
  /** The first time of each of the first eight voices. */
  readonly firsts: readonly HeardWord[];
  /** Vowels whose mark is evidence, by mora. */
  readonly marks: ReadonlyMap<number, MoraMarks>;
}

export interface MoraMarks {
  readonly tokens: number;
  readonly devoiced: number;
  readonly voices: ReadonlySet<string>;
}

/** The words that were said, by spelling and sound, in the order in which they were first met. */
export type HeardIndex = ReadonlyMap<string, TimesHeard>;

const mostFirsts = 8;

interface Growing {
  surface: string;
  sound: Sound;
  tokens: number;
  voices: Set<string>;
  firsts: HeardWord[];
  marks: Map<number, { tokens: number; devoiced: number; voices: Set<string> }>;
}

/** Adds up words as they are heard. */
export class HeardCounter {
  readonly #words = new Map<string, Growing>();

  get index(): HeardIndex {
    return this.#words;
  }

  /** Words of several corpora, one corpus after the other. */
  static joined(counters: readonly HeardCounter[]): HeardIndex {
    if (counters.length === 1) return counters[0]!.index;
    const all = new HeardCounter();
    for (const { index } of counters) for (const word of index.values()) all.#join(word);
    return all.index;
  }

  /** Takes the words of another corpus, whose voices are all others. */
  #join({ surface, sound, tokens, voices, firsts, marks }: TimesHeard): void {
    const word = this.#wordOf(surface, sound);
    word.tokens += tokens;
    word.firsts.push(...firsts.slice(0, mostFirsts - word.firsts.length));
    for (const voice of voices) word.voices.add(voice);
    for (const [mora, more] of marks) {
      const own = marksOf(word, mora);
      own.tokens += more.tokens;
      own.devoiced += more.devoiced;
      for (const voice of more.voices) own.voices.add(voice);
    }
  }

  add(heard: HeardWord): void {
    const word = this.#wordOf(heard.surface, heard.sound);
    const voice = voiceOf(heard);
    word.tokens++;
    if (!word.voices.has(voice) && word.firsts.length < mostFirsts) word.firsts.push(heard);
    word.voices.add(voice);
    for (const [mora, mark] of heard.devoiced) {
      const marks = marksOf(word, mora);
      marks.tokens++;
      if (mark) marks.devoiced++;
      marks.voices.add(voice);
    }
  }

  #wordOf(surface: string, sound: Sound): Growing {
    const key = keyOf({ surface, sound });
    const known = this.#words.get(key);
    if (known !== undefined) return known;
    const word: Growing = { surface, sound, tokens: 0, voices: new Set(), firsts: [], marks: new Map() };
    this.#words.set(key, word);
    return word;
  }
}

function marksOf({ marks }: Growing, mora: number) {
  const known = marks.get(mora);
  if (known !== undefined) return known;
  const first = { tokens: 0, devoiced: 0, voices: new Set<string>() };
  marks.set(mora, first);
  return first;
}

export function timesHeard(
  index: HeardIndex,
  word: { readonly surface: string; readonly sound: Sound },
): TimesHeard | undefined {
  return index.get(keyOf(word));
}

/** Everybody who said a word that could be written in kana, sorted. */
export function voicesIn(index: HeardIndex): string[] {
  return [...new Set([...index.values()].flatMap(({ voices }) => [...voices]))].sort();
}

const keyOf = ({ surface, sound }: { readonly surface: string; readonly sound: string }) =>
  `${surface}\u0000${sound}`;

const voiceOf = ({ dataset, speaker }: HeardWord) => `${dataset}/${speaker}`;
