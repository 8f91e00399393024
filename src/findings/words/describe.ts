import type { Candidate } from "./candidate.ts";
import type { HeardWord } from "./corpusWords.ts";
import { type Chance, chanceOf } from "./devoicingTable.ts";
import { vowelsOf } from "./environment.ts";
import type { Evidence } from "./evidence.ts";
import { timesHeard } from "./heardIndex.ts";
import type { Lexicon, LexiconWord } from "./lexicon.ts";
import { reasonsOf } from "./reasons.ts";
import { transcribe } from "./transcribe.ts";
import { voicedNeighbour } from "./voicedNeighbour.ts";

/** A place in a recording where a word can be heard. */
export interface Clip {
  readonly dataset: string;
  readonly utterance: string;
  readonly speaker: string;
  readonly startMs: number;
  readonly endMs: number;
  /** Whether the vowel in question was marked devoiced; null when it is not known. */
  readonly devoiced: boolean | null;
}

export interface DrillWord {
  readonly surface: string;
  readonly kana: string;
  readonly romaji: string;
  readonly ipa: string;
  readonly morae: number;
  readonly gloss: string | null;
  readonly level: string | null;
  readonly partOfSpeech: string | null;
  readonly accents: readonly number[] | null;
  readonly sources: readonly string[];
  /** Other words of the same sound that can be said alone, commonest first; no names, no stems. */
  readonly homophones: readonly string[];
  readonly tokens: number;
  readonly speakers: number;
  /** One clip a speaker. */
  readonly clips: readonly Clip[];
}

/** What a page, a table or a handout shows of a candidate. */
export interface DrillItem extends Omit<Candidate, "words"> {
  readonly words: readonly DrillWord[];
  /** For a devoiced vowel: a word that differs only in the consonant after it, which is voiced, as the vowel then is. */
  readonly neighbour: DrillWord | null;
  /** The evidence in one line. */
  readonly evidence: string;
}

const mostHomophones = 6;
const mostClips = 8;

export function describe(candidate: Candidate, lexicon: Lexicon, evidence: Evidence): DrillItem {
  const { words, focus } = candidate;
  const neighbour =
    candidate.target.startsWith("devoiced-") && words.length === 1
      ? voicedNeighbour(words[0]!.sound, focus[0]!, lexicon)
      : null;
  return {
    ...candidate,
    neighbour: neighbour === null ? null : describeWord(neighbour, focus[0]!, lexicon, evidence),
    words: words.map((word, at) => describeWord(word, focus[at]!, lexicon, evidence)),
    evidence: reasonsOf(candidate, evidence.devoicing).join("; "),
  };
}

/** A word with its transcription; vowels more likely devoiced than not are written so. */
export function describeWord(
  word: LexiconWord,
  focus: number,
  lexicon: Lexicon,
  evidence: Evidence,
): DrillWord {
  const heard = timesHeard(evidence.heard, word);
  const others = (lexicon.bySound.get(word.sound) ?? []).filter(
    ({ surface, unfit }) => surface !== word.surface && !unfit,
  );
  return {
    surface: word.surface,
    ...transcribe(word.sound, whispered(word, evidence)),
    morae: word.sound.length,
    gloss: word.gloss,
    level: word.level,
    partOfSpeech: word.partOfSpeech,
    accents: word.accents,
    sources: word.sources,
    homophones: others.slice(0, mostHomophones).map(({ surface }) => surface),
    tokens: heard?.tokens ?? 0,
    speakers: heard?.voices.size ?? 0,
    clips: clipsOf(heard?.firsts ?? [], focus),
  };
}

const likely = ({ estimate }: Chance) => estimate !== null && estimate > 0.5;

export function whispered({ sound, accents }: LexiconWord, { devoicing }: Evidence): Set<number> {
  const vowels = vowelsOf(sound, accents?.[0] ?? null).filter((vowel) => likely(chanceOf(devoicing, vowel)));
  return new Set(vowels.map(({ mora }) => mora));
}

function clipsOf(firsts: readonly HeardWord[], focus: number): Clip[] {
  return firsts.slice(0, mostClips).map(({ dataset, utterance, speaker, startMs, endMs, devoiced }) => ({
    ...{ dataset, utterance, speaker, startMs, endMs },
    devoiced: devoiced.get(focus) ?? null,
  }));
}
