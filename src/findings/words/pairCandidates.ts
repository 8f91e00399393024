import { type AccentRelation, bestWords } from "./accentConfound.ts";
import type { Candidate, Confound } from "./candidate.ts";
import { type Chance, chanceOf } from "./devoicingTable.ts";
import { vowelsOf, type WordVowel } from "./environment.ts";
import type { Evidence } from "./evidence.ts";
import type { SoundPair, SoundPairs } from "./findPairs.ts";
import { timesHeard } from "./heardIndex.ts";
import type { LengthRatio } from "./lengthEvidence.ts";
import type { Lexicon, LexiconWord } from "./lexicon.ts";
import { scoreCandidate } from "./scoreCandidate.ts";
import { geminateUnit, phonesOfUnit, type Sound, vowelOfUnit } from "./sound.ts";
import { kindOfTarget, type PairTarget } from "./targets.ts";
import type { CandidateOptions } from "./wordCandidates.ts";

/** Pairs and triplets for a target, each with the two or three words that make it best. */
export function pairCandidates(
  lexicon: Lexicon,
  found: SoundPairs,
  evidence: Evidence,
  target: PairTarget,
  options: CandidateOptions,
): Candidate[] {
  if (target === "triplet") return tripletCandidates(lexicon, found, evidence, options);
  const kind = kindOfTarget[target];
  return found.pairs.flatMap((pair) => {
    if (pair.kind !== kind || pair.two.length > options.maxMorae || pair.two.endsWith(geminateUnit))
      return [];
    const best = bestWords(lexicon.bySound.get(pair.one)!, lexicon.bySound.get(pair.two)!, pair);
    if (best === null) return [];
    const focus = [pair.mora, pair.mora];
    const candidate = candidateOf(target, [best.one, best.two], focus, best.accent, evidence, options);
    const unfit = candidate.chances.some(
      ({ estimate, how }) => how === "too-few" || (estimate !== null && estimate <= 0.5),
    );
    return unfit ? [] : [candidate];
  });
}

function tripletCandidates(
  lexicon: Lexicon,
  { triplets }: SoundPairs,
  evidence: Evidence,
  options: CandidateOptions,
): Candidate[] {
  return triplets.flatMap(({ short, geminate, long, mora }) => {
    if (long.length > options.maxMorae || geminate.endsWith(geminateUnit)) return [];
    const words = (sound: Sound) => lexicon.bySound.get(sound)!;
    const pair = (kind: SoundPair["kind"], two: Sound) => ({ kind, one: short, two, mora });
    const first = bestWords(words(short), words(long), pair("vowel-length", long));
    if (first === null) return [];
    const second = bestWords([first.one], words(geminate), pair("gemination", geminate));
    if (second === null) return [];
    const relations = [first.accent, second.accent];
    const accent = relations.includes("different")
      ? "different"
      : relations.includes("unknown")
        ? "unknown"
        : "same";
    const chosen = [first.one, second.two, first.two];
    return [candidateOf("triplet", chosen, [mora, mora, mora], accent, evidence, options)];
  });
}

function candidateOf(
  target: PairTarget,
  words: readonly LexiconWord[],
  focus: readonly number[],
  accent: AccentRelation,
  evidence: Evidence,
  { weights }: CandidateOptions,
): Candidate {
  const mora = focus[0]!;
  const last = words.at(-1)!.sound;
  const vowel = vowelOfUnit(last[mora - 1] ?? "");
  const consonant = consonantAfter(words[1]!.sound, mora);
  const vowels = words.map(({ sound, accents }) => vowelsOf(sound, accents?.[0] ?? null));
  const chances = target === "devoiced-pair" ? vowels.map((all) => chanceAt(all, mora, evidence)) : [];
  const ratios = ratiosOf(target, vowel, consonant, evidence);
  const confounds: Confound[] = [];
  if (accent === "different") confounds.push("accent-differs");
  if (accent === "unknown") confounds.push("accent-unknown");
  if (chances.some(({ estimate, tokens }) => estimate !== null && tokens === 0)) confounds.push("not-met");
  if (new Set(words.map(({ partOfSpeech }) => partOfSpeech?.split(" ")[0])).size > 1)
    confounds.push("parts-of-speech-differ");
  const other = (all: readonly WordVowel[]) =>
    all.some((one) => one.devoiceable && !(target === "devoiced-pair" && one.mora === mora));
  if (vowels.some(other)) confounds.push("other-devoiceable");
  const behind = [...chances.map(({ speakers }) => speakers), ...ratios.map(({ speakers }) => speakers)];
  const own = vowels[1]!.find((one) => one.mora === mora);
  const c1 = own?.before ?? consonantOf(last[mora - 1]);
  const c2 = own?.after ?? consonant ?? "pause";
  return scoreCandidate(
    {
      ...{ target, words, focus, chances, ratios, accent, confounds, c1, c2 },
      environment: environmentName(target, vowel, c1, c2, mora),
      heardSpeakers: Math.min(...words.map((word) => timesHeard(evidence.heard, word)?.voices.size ?? 0)),
      evidenceSpeakers: behind.length === 0 ? 0 : Math.min(...behind),
    },
    weights,
  );
}

function environmentName(
  target: PairTarget,
  vowel: string | null,
  c1: string,
  c2: string,
  mora: number,
): string {
  if (target === "vowel-length") return `${vowel} ${mora === 1 ? "first" : "later"}`;
  if (target === "gemination") return c2;
  return target === "triplet"
    ? `${vowel} ${c2}`
    : target === "devoiced-pair"
      ? `${c1} ${c2}`
      : `${vowel} ${c2}`;
}

function ratiosOf(
  target: PairTarget,
  vowel: string | null,
  consonant: string | null,
  { lengths }: Evidence,
): LengthRatio[] {
  const of = (table: Readonly<Record<string, LengthRatio>>, phone: string | null) =>
    [(phone === null ? undefined : table[phone]) ?? table.all].filter((ratio) => ratio !== undefined);
  if (target === "vowel-length") return of(lengths.vowels, vowel);
  if (target === "gemination") return of(lengths.consonants, consonant);
  return target === "triplet" ? [...of(lengths.vowels, vowel), ...of(lengths.consonants, consonant)] : [];
}

function chanceAt(vowels: readonly WordVowel[], mora: number, { devoicing }: Evidence): Chance {
  return chanceOf(devoicing, vowels.find((one) => one.mora === mora)!);
}

/** Consonant that begins the mora after index `mora`, null for a vowel or the end. */
function consonantAfter(sound: Sound, mora: number): string | null {
  const phones = mora + 1 < sound.length ? phonesOfUnit(sound[mora + 1]!) : [];
  return phones.length > 1 ? phones[0]! : null;
}

function consonantOf(unit: string | undefined): string {
  const phones = unit === undefined ? [] : phonesOfUnit(unit);
  return phones.length > 1 ? phones[0]! : "vowel";
}
