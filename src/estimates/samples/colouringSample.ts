import { type ColouredTokens, colouredConsonants, colouredTokens } from "../colouring.ts";
import { consonantCentreHz } from "../consonantCentre.ts";
import type { Source } from "../explain/sources.ts";
import { labelAt, type TokenTable } from "../tokenTable.ts";

type Vowel = keyof ColouredTokens["rows"];

/** Centres of gravity of one consonant before one vowel. */
export interface ColouringSide {
  readonly consonant: (typeof colouredConsonants)[number];
  readonly vowel: Vowel;
  readonly before: "i" | "u";
  /** Tokens by steps of `stepHz` from 0 Hz on; empty without any. */
  readonly histogram: readonly number[];
  readonly perSpeaker: readonly {
    readonly speaker: string;
    readonly tokens: number;
    readonly meanHz: number;
  }[];
}

export const stepHz = 200;

/** How the centres of gravity spread that `consonantColouring` compares, and each speaker's means. */
export function colouringSample(table: TokenTable, source: Source): ColouringSide[] {
  return colouredConsonants.flatMap((consonant) => {
    const { rows } = colouredTokens(table, source, consonant);
    return (["devoiced", "voiced"] as const).flatMap((vowel) =>
      (["i", "u"] as const).map((before) => ({
        ...{ consonant, vowel, before },
        ...sideOf(
          table,
          rows[vowel].filter((row) => labelAt(table.labels.phone, row) === before),
        ),
      })),
    );
  });
}

function sideOf(table: TokenTable, rows: Uint32Array) {
  const { labels } = table;
  const counts: number[] = [];
  const speakers = new Map<string, { tokens: number; sum: number }>();
  for (const row of rows) {
    const hz = consonantCentreHz(table, row - 1);
    const bin = Math.floor(hz / stepHz);
    counts[bin] = (counts[bin] ?? 0) + 1;
    const speaker = labelAt(labels.speaker, row) ?? "unknown";
    const own = speakers.get(speaker) ?? { tokens: 0, sum: 0 };
    speakers.set(speaker, { tokens: own.tokens + 1, sum: own.sum + hz });
  }
  return {
    histogram: Array.from(counts, (count) => count ?? 0),
    perSpeaker: [...speakers]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([speaker, { tokens, sum }]) => ({ speaker, tokens, meanHz: Math.round(sum / tokens) })),
  };
}
