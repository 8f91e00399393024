import type { Candidate, Confound } from "./candidate.ts";
import { type Chance, chanceOf } from "./devoicingTable.ts";
import { environmentOf, groupOf, vowelsOf, type WordVowel } from "./environment.ts";
import type { Evidence } from "./evidence.ts";
import { timesHeard } from "./heardIndex.ts";
import type { Lexicon, LexiconWord } from "./lexicon.ts";
import { scoreCandidate } from "./scoreCandidate.ts";
import { geminateUnit, type Sound } from "./sound.ts";
import type { WordTarget } from "./targets.ts";
import type { Weights } from "./weights.ts";

export interface CandidateOptions {
  readonly maxMorae: number;
  readonly weights: Weights;
}

/** Homophones from which a word counts as having many. */
const manyHomophones = 5;

/**
 * Single words for a target, one entry a word and vowel. A word is said alone, so that pauses stand around it; with
 * several accents in use the first counts.
 */
export function wordCandidates(
  lexicon: Lexicon,
  evidence: Evidence,
  target: WordTarget,
  { maxMorae, weights }: CandidateOptions,
): Candidate[] {
  const found: Candidate[] = [];
  for (const [sound, accentUnknown] of devoiceableSounds(lexicon, maxMorae)) {
    const homophones = lexicon.bySound.get(sound)!;
    for (const word of homophones) {
      if (word.unfit) break;
      const vowels =
        word.accents === null ? accentUnknown : devoiceableVowels(sound, word.accents[0] ?? null);
      for (const vowel of vowels) {
        if (!suits(vowel, chanceOf(evidence.devoicing, vowel), target)) continue;
        found.push(candidateOf(word, vowel, vowels, homophones.length, evidence, target, weights));
      }
    }
  }
  return found;
}

const known = new WeakMap<Lexicon, { maxMorae: number; sounds: Map<Sound, readonly WordVowel[]> }>();

/** Sounds of words that can be proposed and hold vowels that may be devoiced, with these: the same for all targets. */
function devoiceableSounds(lexicon: Lexicon, maxMorae: number): ReadonlyMap<Sound, readonly WordVowel[]> {
  const before = known.get(lexicon);
  if (before?.maxMorae === maxMorae) return before.sounds;
  const sounds = new Map<Sound, readonly WordVowel[]>();
  for (const [sound, homophones] of lexicon.bySound) {
    if (sound.length > maxMorae || homophones[0]!.unfit || sound.endsWith(geminateUnit)) continue;
    const vowels = devoiceableVowels(sound, null);
    if (vowels.length > 0) sounds.set(sound, vowels);
  }
  known.set(lexicon, { maxMorae, sounds });
  return sounds;
}

function devoiceableVowels(sound: Sound, accent: number | null): WordVowel[] {
  return vowelsOf(sound, accent).filter(({ devoiceable }) => devoiceable);
}

/** A corpus without marks rules nothing out: the word then says that its chance is unknown. Too few vowels alike propose none. */
function suits({ vowel, after }: WordVowel, { estimate, how }: Chance, target: WordTarget): boolean {
  if (how === "too-few") return false;
  if (target === "kept-voiced") return estimate === null || estimate < 0.5;
  if (target === "final") return after === "pause";
  if (estimate !== null && estimate <= 0.5) return false;
  if (target === "devoiced-i") return vowel === "i" && after !== "pause";
  return vowel === "u" && after !== "pause";
}

function candidateOf(
  word: LexiconWord,
  vowel: WordVowel,
  vowels: readonly WordVowel[],
  homophones: number,
  evidence: Evidence,
  target: WordTarget,
  weights: Weights,
): Candidate {
  const chance = chanceOf(evidence.devoicing, vowel);
  const confounds: Confound[] = [];
  if (word.accents === null) confounds.push("accent-unknown");
  if (vowels.length > 1) confounds.push("other-devoiceable");
  if (homophones >= manyHomophones) confounds.push("many-homophones");
  if (chance.estimate !== null && chance.tokens === 0) confounds.push("not-met");
  return scoreCandidate(
    {
      target,
      words: [word],
      focus: [vowel.mora],
      environment:
        target === "kept-voiced"
          ? environmentOf(vowel)
          : `${vowel.vowel} ${groupOf(vowel.before)} ${groupOf(vowel.after)}`,
      c1: vowel.before,
      c2: vowel.after,
      chances: [chance],
      ratios: [],
      accent: null,
      confounds,
      heardSpeakers: timesHeard(evidence.heard, word)?.voices.size ?? 0,
      evidenceSpeakers: chance.speakers,
    },
    weights,
  );
}
