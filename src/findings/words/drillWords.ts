import type { WordMaterial } from "./assembleWords.ts";
import type { Candidate } from "./candidate.ts";
import { chooseSet, heldOutSpeakers, isEligible, type SetOptions } from "./chooseSet.ts";
import { type DrillItem, describe } from "./describe.ts";
import type { DevoicingTable } from "./devoicingTable.ts";
import { voicesIn } from "./heardIndex.ts";
import type { LengthEvidence } from "./lengthEvidence.ts";
import { type Listing, ListingWriter } from "./listing.ts";
import { pairCandidates } from "./pairCandidates.ts";
import { type SaidWord, saidWords, wordsToHear } from "./saidWords.ts";
import { isPairTarget, type Target, targets, targetTitles } from "./targets.ts";
import { defaultWeights, type Weights } from "./weights.ts";
import { wordCandidates } from "./wordCandidates.ts";

export interface DrillOptions extends SetOptions {
  readonly targets: readonly Target[];
  readonly maxMorae: number;
  readonly weights: Weights;
}

/** What follows from each: sets of a dozen are a lesson; four morae keep words readable; with no fewest speakers, words of environments that were never heard come too, and say so. */
export const defaultDrillOptions: DrillOptions = {
  targets,
  size: 12,
  maxMorae: 4,
  minSpeakers: 0,
  heardOnly: false,
  listOnly: false,
  heldOutShare: 0.25,
  seed: 1,
  weights: defaultWeights,
};

export interface DrillSet {
  readonly target: Target;
  readonly title: string;
  readonly items: readonly (DrillItem & { readonly heldOut: boolean })[];
  /** Environments that words were found for but that the set is too small to hold. */
  readonly uncovered: readonly string[];
  readonly eligible: number;
}

/** What `drill-words.json` holds. */
export interface DrillWords {
  readonly options: DrillOptions;
  readonly devoicing: DevoicingTable;
  readonly lengths: LengthEvidence;
  readonly sets: readonly DrillSet[];
  /** Speakers to keep for a later test, and all others. */
  readonly speakers: { readonly practice: readonly string[]; readonly heldOut: readonly string[] };
  /** The best candidates of each target, for pages that filter and sort; best first. */
  readonly listing: Listing;
  /** Words of the corpus in which vowels that may be devoiced can be heard. */
  readonly said: readonly SaidWord[];
  /** Spellings of the corpus that were left out as pieces of words: how many, and the first of them. */
  readonly fragments: { readonly count: number; readonly first: readonly string[] };
}

/** Words to hear for each pair of sounds around a vowel, and words to hear in all. */
const saidOfEach = 8;
const mostSaid = 1200;
/** Pieces of words that are named, of those left out. */
const namedFragments = 5;

/** A set for each target, and the `most` best candidates of each (default none). Pure: the same input gives the same output. */
export function drillWords(material: WordMaterial, given: Partial<DrillOptions> = {}, most = 0): DrillWords {
  const options = { ...defaultDrillOptions, ...given };
  const { lexicon, evidence } = material;
  const writer = new ListingWriter();
  const sets = options.targets.map((target): DrillSet => {
    const candidates = candidatesOf(material, target, options);
    if (most > 0) writer.add(target, candidates, most, lexicon, evidence);
    const { chosen, heldOut, uncovered, eligible } = chooseSet(candidates, options);
    return {
      ...{ target, title: targetTitles[target], uncovered, eligible },
      items: chosen.map((one, at) => ({ ...describe(one, lexicon, evidence), heldOut: heldOut.has(at) })),
    };
  });
  const speakers = voicesIn(evidence.heard);
  const heldOut = heldOutSpeakers(speakers, options.heldOutShare, options.seed);
  return {
    options,
    devoicing: evidence.devoicing,
    lengths: evidence.lengths,
    sets,
    speakers: { practice: speakers.filter((speaker) => !heldOut.includes(speaker)), heldOut },
    listing: writer.finish(),
    said: most > 0 ? wordsToHear(saidWords(evidence.heard), saidOfEach, mostSaid) : [],
    fragments: { count: material.fragments.length, first: material.fragments.slice(0, namedFragments) },
  };
}

/** All candidates of a target that enough speakers stand behind, best first; equals in the order of their kana. */
function candidatesOf(material: WordMaterial, target: Target, options: DrillOptions): Candidate[] {
  const { lexicon, pairs, evidence } = material;
  const found = isPairTarget(target)
    ? pairCandidates(lexicon, pairs, evidence, target, options)
    : wordCandidates(lexicon, evidence, target, options);
  const key = ({ words }: Candidate) => words.map(({ sound, surface }) => `${sound} ${surface}`).join(" ");
  return found
    .filter((candidate) => isEligible(candidate, options))
    .map((candidate) => ({ candidate, key: key(candidate) }))
    .sort((a, b) => b.candidate.score - a.candidate.score || (a.key < b.key ? -1 : a.key > b.key ? 1 : 0))
    .map(({ candidate }) => candidate);
}
