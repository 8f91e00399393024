import type { Candidate } from "./candidate.ts";
import { type DrillWord, describe } from "./describe.ts";
import { environmentOf, vowelsOf } from "./environment.ts";
import type { Evidence } from "./evidence.ts";
import type { Lexicon } from "./lexicon.ts";
import type { Target } from "./targets.ts";

/** A candidate as results list it by the thousand: words, chances and ratios by name, each written down once elsewhere. */
export interface ListedCandidate extends Omit<Candidate, "words" | "chances" | "ratios" | "parts"> {
  /** The same as long as target and words are the same: it may stand in an address. */
  readonly id: string;
  /** Indices into the listing's words. */
  readonly words: readonly number[];
  /** Environments of its vowels in question: names among the chances of devoicing. */
  readonly chances: readonly string[];
  /** Sounds whose length ratio it rests on. */
  readonly ratios: readonly string[];
  /** Index of the word in which the vowel stays voiced. */
  readonly neighbour: number | null;
}

export interface Listing {
  readonly words: readonly DrillWord[];
  readonly candidates: readonly ListedCandidate[];
  /** How many were found for each target, of which the listing holds the best. */
  readonly found: Readonly<Partial<Record<Target, number>>>;
}

/** Candidates of each environment that are listed however poor their score, so that no environment is lost. */
const leastOfEach = 6;

/** The `most` best of a target's candidates, some of every environment among them; best first, as they came. */
export function bestCandidates(candidates: readonly Candidate[], most: number): Candidate[] {
  const counts = new Map<string, number>();
  const first: number[] = [];
  const rest: number[] = [];
  for (const [at, { environment }] of candidates.entries()) {
    const count = counts.get(environment) ?? 0;
    counts.set(environment, count + 1);
    (count < leastOfEach ? first : rest).push(at);
  }
  const kept = [...first, ...rest].slice(0, most).sort((a, b) => a - b);
  return kept.map((at) => candidates[at]!);
}

/** Draws up a listing, target by target. */
export class ListingWriter {
  readonly #words: DrillWord[] = [];
  readonly #places = new Map<string, number>();
  readonly #candidates: ListedCandidate[] = [];
  readonly #ids = new Set<string>();
  readonly #found: Partial<Record<Target, number>> = {};

  add(
    target: Target,
    candidates: readonly Candidate[],
    most: number,
    lexicon: Lexicon,
    evidence: Evidence,
  ): void {
    this.#found[target] = candidates.length;
    for (const candidate of bestCandidates(candidates, most)) {
      const { words, neighbour } = describe(candidate, lexicon, evidence);
      const { focus, environment, c1, c2, accent, confounds, heardSpeakers, evidenceSpeakers } = candidate;
      this.#candidates.push({
        id: this.#idOf(target, words),
        ...{ target, words: words.map((word) => this.#placeOf(word)), focus, environment, c1, c2 },
        chances:
          candidate.chances.length === 0 ? [] : candidate.words.map((_, at) => placeName(candidate, at)),
        ratios: candidate.ratios.map(({ phone }) => phone),
        ...{ accent, confounds, heardSpeakers, evidenceSpeakers },
        score: Math.round(1000 * candidate.score) / 1000,
        neighbour: neighbour === null ? null : this.#placeOf(neighbour),
      });
    }
  }

  finish(): Listing {
    return { words: this.#words, candidates: this.#candidates, found: this.#found };
  }

  #placeOf(word: DrillWord): number {
    const key = `${word.surface} ${word.kana}`;
    const known = this.#places.get(key);
    if (known !== undefined) return known;
    this.#places.set(key, this.#words.length);
    return this.#words.push(word) - 1;
  }

  #idOf(target: Target, words: readonly DrillWord[]): string {
    let text = [target, ...words.map(({ surface, kana }) => `${surface} ${kana}`)].join("/");
    for (;;) {
      const id = shortName(text);
      if (!this.#ids.has(id)) {
        this.#ids.add(id);
        return id;
      }
      text += "/";
    }
  }
}

function placeName({ words, focus }: Candidate, at: number): string {
  const { sound, accents } = words[at]!;
  const vowels = vowelsOf(sound, accents?.[0] ?? null);
  return environmentOf(vowels.find(({ mora }) => mora === focus[at])!);
}

/** Six letters and digits from a text (FNV-1a, 32 bits): two of 5,000 share one about once in 300 listings. */
export function shortName(text: string): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193);
  return (hash >>> 0).toString(36).padStart(7, "0").slice(-6);
}
