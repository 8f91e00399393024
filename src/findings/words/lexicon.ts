import { type Sound, spellingKey } from "./sound.ts";

export const wordSources = ["corpus", "list", "dictionary"] as const;
export type WordSource = (typeof wordSources)[number];

/** One spelling with one sound, whatever it was found in. */
export interface LexiconWord {
  readonly surface: string;
  readonly sound: Sound;
  /** IPADIC part of speech, as 名詞 一般; null when no dictionary says. */
  readonly partOfSpeech: string | null;
  /** True for names, inflected forms, particles and parts of words: never proposed, but they count as homophones. */
  readonly unfit: boolean;
  /** The analyser's cost, lower is commoner, roughly; null when it is in no dictionary. */
  readonly cost: number | null;
  /** Mora after which the pitch falls, from 1; 0 flat; several when several are in use; null: accent unknown. */
  readonly accents: readonly number[] | null;
  readonly gloss: string | null;
  readonly level: string | null;
  readonly sources: readonly WordSource[];
}

/** All words by sound; the words of one sound are homophones, commonest first. */
export interface Lexicon {
  readonly bySound: ReadonlyMap<Sound, readonly LexiconWord[]>;
  readonly words: number;
  /** Words that are only spelt otherwise, by surface: how a reading in ordinary kana is brought to its sound. Made when it is first asked for. */
  readonly bySurface: ReadonlyMap<string, readonly LexiconWord[]>;
}

/** An accent as a lexicon of accents gives it. */
export interface AccentEntry {
  readonly surface: string;
  readonly sound: Sound;
  readonly accents: readonly number[];
}

/**
 * Merges words from several sources: same spelling and sound is one word, which keeps the first value known of each
 * property in the order of `lists`. Accents of `accents` are given to words of the same spelling whose readings
 * differ at most in how long vowels are written, where the word has none of its own.
 */
export function mergeLexicon(
  lists: readonly (readonly LexiconWord[])[],
  accents: readonly AccentEntry[] = [],
): Lexicon {
  const bySound = new Map<Sound, LexiconWord[]>();
  for (const list of lists)
    for (const word of list) {
      const homophones = bySound.get(word.sound);
      if (homophones === undefined) bySound.set(word.sound, [word]);
      else {
        const at = homophones.findIndex(({ surface }) => surface === word.surface);
        if (at < 0) homophones.push(word);
        else homophones[at] = joined(homophones[at]!, word);
      }
    }
  giveAccents(bySound, accents);
  let words = 0;
  for (const homophones of bySound.values()) {
    homophones.sort(commonestFirst);
    words += homophones.length;
  }
  let spelt: Map<string, LexiconWord[]> | null = null;
  return {
    bySound,
    words,
    get bySurface() {
      spelt ??= groupBySurface(bySound);
      return spelt;
    },
  };
}

function groupBySurface(bySound: ReadonlyMap<Sound, readonly LexiconWord[]>): Map<string, LexiconWord[]> {
  const bySurface = new Map<string, LexiconWord[]>();
  for (const homophones of bySound.values())
    for (const word of homophones) {
      const same = bySurface.get(word.surface);
      if (same === undefined) bySurface.set(word.surface, [word]);
      else same.push(word);
    }
  return bySurface;
}

function joined(one: LexiconWord, other: LexiconWord): LexiconWord {
  return {
    ...one,
    partOfSpeech: one.unfit && !other.unfit ? other.partOfSpeech : (one.partOfSpeech ?? other.partOfSpeech),
    unfit: one.unfit && other.unfit,
    cost: one.cost === null ? other.cost : other.cost === null ? one.cost : Math.min(one.cost, other.cost),
    accents: one.accents ?? other.accents,
    gloss: one.gloss ?? other.gloss,
    level: one.level ?? other.level,
    sources: [...new Set([...one.sources, ...other.sources])],
  };
}

function giveAccents(bySound: ReadonlyMap<Sound, LexiconWord[]>, entries: readonly AccentEntry[]): void {
  if (entries.length === 0) return;
  const bySurface = new Map<string, { key: string; accents: readonly number[] }[]>();
  for (const { surface, sound, accents } of entries) {
    const same = bySurface.get(surface) ?? [];
    same.push({ key: spellingKey(sound), accents });
    bySurface.set(surface, same);
  }
  for (const homophones of bySound.values())
    for (const [at, word] of homophones.entries()) {
      const found = word.accents === null ? bySurface.get(word.surface) : undefined;
      if (found === undefined) continue;
      const key = spellingKey(word.sound);
      const entry = found.find((one) => one.key === key);
      if (entry !== undefined) homophones[at] = { ...word, accents: entry.accents };
    }
}

/** The user's own before others, fit before unfit, then by cost; words without a cost last; nouns wholly in one script before the same cost with kana for a kanji (痛罵 before 痛ば); then by code point, so that the order never varies. */
export function commonestFirst(one: LexiconWord, other: LexiconWord): number {
  if (isListed(one) !== isListed(other)) return isListed(one) ? -1 : 1;
  if (one.unfit !== other.unfit) return one.unfit ? 1 : -1;
  const difference = (one.cost ?? Number.MAX_VALUE) - (other.cost ?? Number.MAX_VALUE);
  const mixed = Number(isMixedNoun(one)) - Number(isMixedNoun(other));
  return difference !== 0
    ? difference
    : mixed !== 0
      ? mixed
      : one.surface < other.surface
        ? -1
        : one.surface > other.surface
          ? 1
          : 0;
}

function isMixedNoun({ surface, partOfSpeech }: LexiconWord): boolean {
  const noun = partOfSpeech?.startsWith("名詞") ?? false;
  return noun && /\p{Script=Han}/u.test(surface) && /\p{Script=Hiragana}/u.test(surface);
}

/** Whether the user named the word. */
export function isListed({ sources }: LexiconWord): boolean {
  return sources.includes("list");
}
