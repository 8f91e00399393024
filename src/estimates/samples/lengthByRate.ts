import { quantile } from "../../signals/quantile.ts";
import { type CellToken, cellsFromTokens } from "../cellsFromTokens.ts";
import { type Contrast, contrasts, sides } from "../lengthContrast.ts";
import { durationRatios, type RatioRow } from "../ratios.ts";
import { labelAt, type TokenTable } from "../tokenTable.ts";

export const rateBands = ["slow", "middle", "fast"] as const;
export type RateBand = (typeof rateBands)[number];

/** Length ratios of one contrast with speech rate taken into account, of one dataset and label set. */
export interface LengthByRate {
  readonly contrast: Contrast;
  /** All sounds together (`by` empty) and each (`by.phone`), of durations in ms. */
  readonly raw: readonly RatioRow[];
  /** The same of durations in thousandths of the mean mora of the stretch between pauses. */
  readonly perMora: readonly RatioRow[];
  /** All sounds together in each third of the speaker's own speech rates. */
  readonly bands: readonly { readonly band: RateBand; readonly row: RatioRow }[];
}

type RatedToken = CellToken & { readonly rate: number };

/**
 * Long against short and doubled against single: as they are, relative to the mora of their stretch, and in slow, middle
 * and fast stretches, a third of each speaker's tokens each. Tokens without a known rate are left out of all three, so
 * that they compare the same. Normalisation as in `normaliseDurations` (`mora`).
 */
export function lengthByRate(table: TokenTable, rows: Uint32Array, level: number): LengthByRate[] {
  const tokens = ratedTokens(table, rows);
  if (tokens.length === 0) return [];
  const inMorae = tokens.map((token) => ({ ...token, durationMs: token.durationMs * token.rate }));
  const limits = thirdsBySpeaker(tokens);
  const banded = tokens.map((token) => ({ ...token, position: bandOf(token, limits.get(token.speaker)!) }));
  const [raw, perMora, byBand] = [tokens, inMorae, banded].map(cellsFromTokens);
  return contrasts.map((contrast) => {
    const ratios = (cells: typeof raw, by: "phone" | "position" | null) =>
      durationRatios(cells!, { contrast, level, by: by === null ? [] : [by] }).rows.filter(
        ({ estimate }) => estimate !== null,
      );
    const bands = ratios(byBand, "position");
    return {
      contrast,
      raw: [...ratios(raw, null), ...ratios(raw, "phone")],
      perMora: [...ratios(perMora, null), ...ratios(perMora, "phone")],
      bands: rateBands.flatMap((band) =>
        bands.filter(({ by }) => by.position === band).map((row) => ({ band, row })),
      ),
    };
  });
}

/** Tokens on either side of a contrast that have a duration and a speech rate (mora/s). */
function ratedTokens({ labels, numbers }: TokenTable, rows: Uint32Array): RatedToken[] {
  const wanted = new Set<string | null>(Object.values(sides).flatMap(({ long, short }) => [long, short]));
  const tokens: RatedToken[] = [];
  for (const row of rows) {
    const rate = numbers.speechRateMoraePerSec[row]!;
    const durationMs = numbers.durationMs[row]!;
    if (!(rate > 0 && durationMs > 0) || !wanted.has(labelAt(labels.length, row))) continue;
    const text = (name: keyof typeof labels) => labelAt(labels[name], row);
    const truth = (name: keyof typeof labels) => (text(name) === null ? null : text(name) === "true");
    tokens.push({
      ...{ dataset: text("dataset")!, labelSet: text("labelSet")!, speaker: text("speaker") ?? "unknown" },
      ...{ phone: text("phone")!, kind: text("kind")!, length: text("length") },
      ...{ before: text("before") ?? "unknown", after: text("after") ?? "unknown" },
      ...{ position: "all", accented: null, devoiceableNeighbour: false },
      ...{ timeBasis: text("timeBasis") ?? "aligned", atFloor: truth("atFloor") ?? false },
      ...{ devoiced: null, devoicedBasis: null, durationMs, rate },
    } as RatedToken);
  }
  return tokens;
}

function thirdsBySpeaker(tokens: readonly RatedToken[]): Map<string, readonly [number, number]> {
  const rates = new Map<string, number[]>();
  for (const { speaker, rate } of tokens) {
    const own = rates.get(speaker);
    if (own) own.push(rate);
    else rates.set(speaker, [rate]);
  }
  return new Map([...rates].map(([speaker, own]) => [speaker, [quantile(own, 1 / 3), quantile(own, 2 / 3)]]));
}

function bandOf({ rate }: RatedToken, [low, high]: readonly [number, number]): RateBand {
  return rate <= low ? "slow" : rate <= high ? "middle" : "fast";
}
