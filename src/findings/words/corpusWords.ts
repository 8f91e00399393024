import type { CountedCorpus, TokenTable } from "./corpusTable.ts";
import type { HeardIndex } from "./heardIndex.ts";
import type { LexiconWord } from "./lexicon.ts";
import { geminateUnit, longUnit, nasalUnit, type Sound, unitOf } from "./sound.ts";

/** One time a word was said. */
export interface HeardWord {
  readonly surface: string;
  readonly sound: Sound;
  readonly dataset: string;
  readonly utterance: string;
  readonly speaker: string;
  readonly startMs: number;
  readonly endMs: number;
  /** For each vowel, by its mora: whether it was marked devoiced; only marks that are evidence. */
  readonly devoiced: ReadonlyMap<number, boolean>;
}

/**
 * Listens to the words said in a corpus, whose table may come in pieces: each word with its sound put together from the
 * phones as labelled. Words of one spelling next to each other cannot be told apart and make a longer one, which is
 * found in no dictionary; words whose phones make no kana are left out.
 */
export class WordListener {
  readonly #dataset: string;
  readonly #hear: (word: HeardWord) => void;
  /** The row before, and the word that it belongs to; null where it belongs to none that can be written in kana. */
  #before: { readonly word: unknown; readonly utterance: unknown; readonly index: number } | null = null;
  #word: WordBeingSaid | null = null;

  constructor({ dataset }: Pick<CountedCorpus, "dataset">, hear: (word: HeardWord) => void) {
    this.#dataset = dataset;
    this.#hear = hear;
  }

  /** Takes rows of the corpus, in order. */
  add(table: TokenTable, rows: Uint32Array): void {
    for (const row of rows) {
      const [word, utterance, index] = [table.word[row], table.utterance[row], Number(table.index[row])];
      const before = this.#before;
      if (
        before === null ||
        before.word !== word ||
        before.utterance !== utterance ||
        index !== before.index + 1
      ) {
        this.finish();
        this.#word = typeof word === "string" ? new WordBeingSaid(table, row) : null;
      }
      this.#before = { word, utterance, index };
      this.#word?.add(table, row);
    }
  }

  /** Ends the word in hand. */
  finish(): void {
    const heard = this.#word?.heard(this.#dataset) ?? null;
    if (heard !== null) this.#hear(heard);
    this.#word = null;
    this.#before = null;
  }
}

class WordBeingSaid {
  readonly #surface: string;
  readonly #startMs: number;
  readonly #devoiced = new Map<number, boolean>();
  #sound = "";
  #consonant: string | null = null;
  #isKana = true;
  #last = { utterance: "", speaker: "", endMs: 0 };

  constructor(table: TokenTable, row: number) {
    this.#surface = table.word[row] as string;
    this.#startMs = Number(table.startMs[row]);
  }

  add(table: TokenTable, row: number): void {
    this.#last = {
      utterance: String(table.utterance[row]),
      speaker: String(table.speaker[row]),
      endMs: Number(table.endMs[row]),
    };
    const phone = String(table.phone[row]);
    if (table.kind[row] === "vowel") this.#addVowel(table, row, phone);
    else if (this.#consonant !== null) this.#isKana = false;
    else if (phone === "N") this.#sound += nasalUnit;
    else if (phone === "cl") this.#sound += geminateUnit;
    else {
      if (table.length[row] === "geminate") this.#sound += geminateUnit;
      this.#consonant = phone;
    }
  }

  #addVowel(table: TokenTable, row: number, phone: string): void {
    const unit = unitOf(this.#consonant, phone);
    if (unit === undefined) this.#isKana = false;
    const mark = table.devoiced[row];
    const basis = table.devoicedBasis[row];
    if (typeof mark === "boolean" && (basis === "measured" || basis === "annotated"))
      this.#devoiced.set(this.#sound.length, mark);
    this.#sound += (unit ?? "") + (table.length[row] === "long" ? longUnit : "");
    this.#consonant = null;
  }

  heard(dataset: string): HeardWord | null {
    if (!this.#isKana || this.#sound === "" || this.#consonant !== null) return null;
    const [surface, sound] = [this.#surface, this.#sound];
    return { surface, sound, dataset, ...this.#last, startMs: this.#startMs, devoiced: this.#devoiced };
  }
}

/** The words of a corpus for the lexicon; whether one can be given to a learner alone, a dictionary must say. */
export function corpusWords(heard: HeardIndex): LexiconWord[] {
  return [...heard.values()].map(({ surface, sound }) => ({
    ...{ surface, sound, partOfSpeech: null, unfit: true, cost: null },
    ...{ accents: null, gloss: null, level: null, sources: ["corpus" as const] },
  }));
}
