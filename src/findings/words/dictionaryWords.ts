import { pronounceToken } from "../../phonology/pronounceToken.ts";
import type { ReadingToken } from "../../phonology/readingTypes.ts";
import type { LexiconWord } from "./lexicon.ts";
import { soundOf } from "./sound.ts";

/** A dictionary entry as the storage toolbox reads it. */
export interface DictionaryToken extends ReadingToken {
  readonly conjugated_form: string;
  readonly cost: number;
}

/** The entries of a dictionary. A list will do; one that makes each entry when it is asked for needs much less memory. */
export interface DictionaryTokens extends Iterable<DictionaryToken> {
  readonly length: number;
  at(index: number): DictionaryToken | undefined;
  /** All entries with this spelling; where it is missing, all entries are gone through for it. */
  readonly spelt?: (surface: string) => readonly DictionaryToken[];
}

export interface DictionaryWords {
  readonly words: LexiconWord[];
  /** Entries that are no speech (punctuation, marks) or whose reading is no kana: surface and what stood there. */
  readonly unread: { readonly surface: string; readonly reading: string; readonly partOfSpeech: string }[];
}

/** Nouns that can be said alone. */
const soundNouns = new Set(["一般", "サ変接続", "形容動詞語幹", "副詞可能", "代名詞"]);
const whole = new Set(["副詞", "感動詞", "連体詞"]);

/** Whether a learner can be given the word alone: nouns, verbs and adjectives in their plain form, adverbs, interjections. */
function isFit({ pos, pos_detail_1, conjugated_form }: DictionaryToken): boolean {
  if (pos === "名詞") return soundNouns.has(pos_detail_1);
  if (pos === "動詞" || pos === "形容詞") return pos_detail_1 === "自立" && conjugated_form === "基本形";
  return whole.has(pos);
}

/**
 * Every dictionary entry as a word with its sound, long vowels by the same rules as texts are read by. Entries with
 * one spelling and sound stay apart here; merging joins them. With `mostMorae`, only what words of at most so many
 * morae that can be proposed need: these words and all that sound like them.
 */
export function dictionaryWords(
  tokens: DictionaryTokens,
  mostMorae = Number.POSITIVE_INFINITY,
): DictionaryWords {
  const dictionary = { tokenize: () => [], entries: tokens.spelt ?? bySurface(tokens) };
  const words: LexiconWord[] = [];
  const unread: DictionaryWords["unread"] = [];
  for (const token of Number.isFinite(mostMorae) ? proposable(tokens, mostMorae) : tokens) {
    const reading = token.pos === "記号" ? null : pronounceToken(token, dictionary);
    const sound = reading === null ? null : soundOf(reading);
    const partOfSpeech = `${token.pos} ${token.pos_detail_1}`;
    if (sound === null) {
      unread.push({ surface: token.surface_form, reading: token.reading ?? "", partOfSpeech });
      continue;
    }
    words.push({
      surface: token.surface_form,
      sound,
      partOfSpeech: partOfSpeechOf(partOfSpeech),
      unfit: !isFit(token),
      cost: token.cost,
      accents: null,
      gloss: null,
      level: null,
      sources: dictionarySource,
    });
  }
  return { words, unread };
}

function bySurface(tokens: DictionaryTokens): (surface: string) => readonly DictionaryToken[] {
  const all = new Map<string, DictionaryToken[]>();
  for (const token of tokens) {
    const same = all.get(token.surface_form);
    if (same === undefined) all.set(token.surface_form, [token]);
    else same.push(token);
  }
  return (surface) => all.get(surface) ?? [];
}

/** Entries that can be proposed, with others of the same reading; entries a little longer may be among them. */
function* proposable(tokens: DictionaryTokens, mostMorae: number): Generator<DictionaryToken> {
  const readings = new Map<string, number>();
  const readingOfToken = new Uint32Array(tokens.length);
  const wanted: boolean[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens.at(i)!;
    const { pronunciation, reading: spelt, surface_form } = token;
    // No mora is written with more than two kana; whether two vowels are one long one is told later.
    const reading = (pronunciation ?? spelt ?? surface_form).replace(spelling, (kana) => alike[kana]!);
    const number = readings.get(reading) ?? readings.size;
    readings.set(reading, number);
    readingOfToken[i] = number;
    wanted[number] ||= reading.length <= 2 * mostMorae && isFit(token);
  }
  readings.clear();
  for (let i = 0; i < tokens.length; i++) if (wanted[readingOfToken[i]!]) yield tokens.at(i)!;
}

/** Kana that may sound alike: any vowel may lengthen the one before it; others are old or small forms. */
const alike: Readonly<Record<string, string>> = {
  ...Object.fromEntries([..."アイウエオァィゥェォヰヱヲ"].map((vowel) => [vowel, "ー"])),
  ...{ ヂ: "ジ", ヅ: "ズ", ヮ: "ワ", ヵ: "カ", ヶ: "ケ" },
};
const spelling = new RegExp(`[${Object.keys(alike).join("")}]`, "gu");

const dictionarySource = ["dictionary"] as const;
const names = new Map<string, string>();

/** One string a part of speech: a few dozen serve all entries. */
function partOfSpeechOf(text: string): string {
  const known = names.get(text);
  if (known === undefined) names.set(text, text);
  return known ?? text;
}
