import type { LabelledCorpus, TokenTable } from "./corpusTable.ts";
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
 * The words said in a corpus, each with its sound put together from the phones as labelled. Words of one spelling next
 * to each other cannot be told apart and make a longer one, which is found in no dictionary; words whose phones make no
 * kana are left out.
 */
export function heardWords(table: TokenTable, corpus: LabelledCorpus): HeardWord[] {
  const heard: HeardWord[] = [];
  const { rows } = corpus;
  for (let from = 0; from < rows.length; ) {
    let to = from + 1;
    while (to < rows.length && sameWord(table, rows[to - 1]!, rows[to]!)) to++;
    const word = table.word[rows[from]!];
    if (typeof word === "string") {
      const one = readWord(table, corpus, word, rows.subarray(from, to));
      if (one !== null) heard.push(one);
    }
    from = to;
  }
  return heard;
}

function sameWord(table: TokenTable, a: number, b: number): boolean {
  return (
    table.word[a] === table.word[b] &&
    table.utterance[a] === table.utterance[b] &&
    Number(table.index[b]) === Number(table.index[a]) + 1
  );
}

function readWord(
  table: TokenTable,
  corpus: LabelledCorpus,
  surface: string,
  rows: Uint32Array,
): HeardWord | null {
  let sound = "";
  let consonant: string | null = null;
  const devoiced = new Map<number, boolean>();
  for (const row of rows) {
    const phone = String(table.phone[row]);
    const length = table.length[row];
    if (table.kind[row] === "vowel") {
      const unit = unitOf(consonant, phone);
      if (unit === undefined) return null;
      const mark = table.devoiced[row];
      const basis = table.devoicedBasis[row];
      if (typeof mark === "boolean" && (basis === "measured" || basis === "annotated"))
        devoiced.set(sound.length, mark);
      sound += unit + (length === "long" ? longUnit : "");
      consonant = null;
    } else {
      if (consonant !== null) return null;
      if (phone === "N") sound += nasalUnit;
      else if (phone === "cl") sound += geminateUnit;
      else {
        if (length === "geminate") sound += geminateUnit;
        consonant = phone;
      }
    }
  }
  if (sound === "" || consonant !== null) return null;
  const last = rows[rows.length - 1]!;
  return {
    surface,
    sound,
    dataset: corpus.dataset,
    utterance: String(table.utterance[last]),
    speaker: String(table.speaker[last]),
    startMs: Number(table.startMs[rows[0]!]),
    endMs: Number(table.endMs[last]),
    devoiced,
  };
}

/** The words of a corpus for the lexicon; whether one can be given to a learner alone, a dictionary must say. */
export function corpusWords(heard: readonly HeardWord[]): LexiconWord[] {
  const seen = new Set<string>();
  return heard.flatMap(({ surface, sound }) => {
    const key = `${surface}\u0000${sound}`;
    if (seen.has(key)) return [];
    seen.add(key);
    return [
      {
        ...{ surface, sound, partOfSpeech: null, unfit: true, cost: null },
        ...{ accents: null, gloss: null, level: null, sources: ["corpus" as const] },
      },
    ];
  });
}
