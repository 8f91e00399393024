import type { DrillWord } from "./describe.ts";
import type { Chance, DevoicingTable } from "./devoicingTable.ts";
import type { LengthEvidence } from "./lengthEvidence.ts";
import type { ListedCandidate, Listing } from "./listing.ts";

type Row = readonly unknown[];

/** A listing as a page loads it: rows without names, a third of the size. */
export interface PackedWords {
  readonly devoicing: DevoicingTable;
  readonly lengths: LengthEvidence;
  readonly found: Listing["found"];
  readonly words: readonly Row[];
  readonly candidates: readonly Row[];
}

const wordFields = [
  ...["surface", "kana", "romaji", "ipa", "morae", "gloss", "level", "partOfSpeech", "accents", "sources"],
  ...["homophones", "tokens", "speakers", "clips"],
] as const;
const candidateFields = [
  ...["id", "target", "words", "focus", "environment", "c1", "c2", "chances", "ratios", "accent"],
  ...["confounds", "heardSpeakers", "evidenceSpeakers", "score", "neighbour"],
] as const;

const take = (fields: readonly string[], from: object): unknown[] =>
  fields.map((field) => (from as Record<string, unknown>)[field]);
const give = <T>(fields: readonly string[], row: Row): T =>
  Object.fromEntries(fields.map((field, at) => [field, row[at]])) as T;

const rounded = (value: number | null) => (value === null ? null : Math.round(1e4 * value) / 1e4);

/** Chances to four digits after the point: more than their intervals bear. */
export function packDevoicing(table: DevoicingTable): DevoicingTable {
  const chances = Object.entries(table.chances).map(([name, chance]): [string, Chance] => [
    name,
    {
      ...chance,
      ...{ estimate: rounded(chance.estimate), low: rounded(chance.low), high: rounded(chance.high) },
    },
  ]);
  return { ...table, chances: Object.fromEntries(chances) };
}

export function packWords(listing: Listing, devoicing: DevoicingTable, lengths: LengthEvidence): PackedWords {
  return {
    ...{ devoicing: packDevoicing(devoicing), lengths, found: listing.found },
    words: listing.words.map((word) => take(wordFields, word)),
    candidates: listing.candidates.map((candidate) => take(candidateFields, candidate)),
  };
}

export function unpackListing({ words, candidates, found }: PackedWords): Listing {
  return {
    words: words.map((row) => give<DrillWord>(wordFields, row)),
    candidates: candidates.map((row) => give<ListedCandidate>(candidateFields, row)),
    found,
  };
}
