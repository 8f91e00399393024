import type { Candidate } from "./candidate.ts";
import type { DrillWord } from "./describe.ts";
import { type DevoicingTable, unknownChance } from "./devoicingTable.ts";
import type { LengthEvidence, LengthRatio } from "./lengthEvidence.ts";
import type { ListedCandidate, Listing } from "./listing.ts";
import { reasonsOf } from "./reasons.ts";
import { contrastOf } from "./scoreCandidate.ts";
import { type Sound, soundOf } from "./sound.ts";
import type { ShownItem } from "./wordRows.ts";

export interface OpenWord extends DrillWord {
  readonly sound: Sound;
}

/** A listed candidate with its words, chances and ratios in their place again. */
export interface OpenCandidate extends Omit<Candidate, "words" | "parts"> {
  readonly id: string;
  readonly words: readonly OpenWord[];
  readonly neighbour: OpenWord | null;
  /** Expected size of the contrast from 0 to 1, null where nothing is known. */
  readonly contrast: number | null;
}

/** Puts a listing together again: what a page filters, sorts and chooses from. */
export function openListing(
  { words, candidates }: Listing,
  devoicing: DevoicingTable,
  lengths: LengthEvidence,
): OpenCandidate[] {
  const open = words.map((word): OpenWord => ({ ...word, sound: soundOf(word.kana)! }));
  return candidates.map((listed) => {
    const chances = listed.chances.map((name) => devoicing.chances[name] ?? unknownChance);
    const ratios = ratiosOf(listed, lengths);
    return {
      ...listed,
      words: listed.words.map((at) => open[at]!),
      neighbour: listed.neighbour === null ? null : open[listed.neighbour]!,
      ...{ chances, ratios, contrast: contrastOf({ target: listed.target, chances, ratios }) },
    };
  });
}

/** A triplet rests on a vowel's ratio, then on a consonant's. */
function ratiosOf(
  { target, ratios }: ListedCandidate,
  { vowels, consonants }: LengthEvidence,
): LengthRatio[] {
  return ratios.flatMap((phone, at) => {
    const ratio = (target === "gemination" || at === 1 ? consonants : vowels)[phone];
    return ratio === undefined ? [] : [ratio];
  });
}

/** A candidate as tables and handouts show it, with its evidence in one line. */
export function itemOf(candidate: OpenCandidate, devoicing: DevoicingTable): ShownItem {
  const { id: _, contrast: __, ...rest } = candidate;
  return { ...rest, evidence: reasonsOf(candidate, devoicing).join("; ") };
}
