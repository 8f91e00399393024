import { hiraganaToKatakana } from "./katakana.ts";
import type { LexiconEntry, Piece } from "./readingTypes.ts";

/** Entries by surface, and the length of the longest surface. */
export interface Lexicon {
  readonly entries: ReadonlyMap<string, LexiconEntry>;
  readonly longest: number;
}

/** Later lists win over earlier ones. Surfaces must be prepared like the text they are looked up in. */
export function makeLexicon(
  lists: readonly (readonly LexiconEntry[])[],
  prepare: (surface: string) => string,
): Lexicon {
  const entries = new Map<string, LexiconEntry>();
  for (const list of lists) for (const entry of list) entries.set(prepare(entry.surface), entry);
  return { entries, longest: Math.max(0, ...[...entries.keys()].map((surface) => surface.length)) };
}

/** Replaces runs of words that are together one entry, the longest entry first. */
export function applyLexicon(pieces: readonly Piece[], lexicon: Lexicon): Piece[] {
  const words: Piece[] = [];
  for (let at = 0; at < pieces.length; at++) {
    const first = pieces[at]!;
    let found: { entry: LexiconEntry; end: number } | null = null;
    let surface = "";
    for (let end = at; end < pieces.length && surface.length < lexicon.longest; end++) {
      surface += pieces[end]!.surface;
      const entry = lexicon.entries.get(surface);
      if (entry) found = { entry, end };
    }
    if (!found) {
      words.push(first);
      continue;
    }
    const { entry, end } = found;
    const readings = [entry.reading, ...(entry.alternatives ?? [])].map((reading) =>
      hiraganaToKatakana(reading.normalize("NFKC")),
    );
    const last = pieces[end]!;
    words.push({
      ...first,
      end: last.end,
      surface: pieces
        .slice(at, end + 1)
        .map((piece) => piece.surface)
        .join(""),
      readings,
      isBreak: false,
      accent: entry.accent,
    });
    at = end;
  }
  return words;
}
