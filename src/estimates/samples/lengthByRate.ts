import { isConsonant, isVowel } from "../../phonology/phones.ts";
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

/**
 * Long against short and doubled against single: as they are, relative to the mora of their stretch, and in slow, middle
 * and fast stretches, a third of each speaker's tokens each. Tokens without a known rate are left out of all three, so
 * that they compare the same. Vowels stand between consonants, consonants after a vowel. Normalisation as in `normaliseDurations` (`mora`).
 */
export function lengthByRate(table: TokenTable, rows: Uint32Array, level: number): LengthByRate[] {
  const kept = comparedRows(table, rows);
  if (kept.length === 0) return [];
  const limits = thirdsBySpeaker(table, kept);
  const [raw, perMora, byBand] = (["ms", "mora", "band"] as const).map((unit) =>
    cellsFromTokens(cellTokens(table, kept, unit, limits)),
  );
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

/** Rows on either side of a contrast that have a duration and a speech rate. */
function comparedRows({ labels, numbers }: TokenTable, rows: Uint32Array): Uint32Array {
  const wanted = new Set<string | null>(Object.values(sides).flatMap(({ long, short }) => [long, short]));
  return rows.filter(
    (row) =>
      numbers.speechRateMoraePerSec[row]! > 0 &&
      numbers.durationMs[row]! > 0 &&
      wanted.has(labelAt(labels.length, row)) &&
      neighbourOf(
        labelAt(labels.kind, row),
        labelAt(labels.before, row) ?? "",
        labelAt(labels.after, row) ?? "",
      ) !== null,
  );
}

/** The rows one after the other, in ms, in thousandths of a mora, or with their third in place of the position. */
function* cellTokens(
  { labels, numbers }: TokenTable,
  rows: Uint32Array,
  unit: "ms" | "mora" | "band",
  limits: ReadonlyMap<number, readonly [number, number]>,
): Generator<CellToken> {
  for (const row of rows) {
    const kind = labelAt(labels.kind, row)!;
    const rate = numbers.speechRateMoraePerSec[row]!;
    const durationMs = numbers.durationMs[row]!;
    const neighbour = neighbourOf(kind, labelAt(labels.before, row)!, labelAt(labels.after, row)!)!;
    yield {
      dataset: labelAt(labels.dataset, row)!,
      labelSet: labelAt(labels.labelSet, row)!,
      speaker: labelAt(labels.speaker, row) ?? "unknown",
      phone: labelAt(labels.phone, row)!,
      kind,
      length: labelAt(labels.length, row),
      before: neighbour,
      after: neighbour,
      position: unit === "band" ? bandOf(rate, limits.get(labels.speaker.codes[row]!)!) : "all",
      accented: null,
      devoiceableNeighbour: false,
      timeBasis: labelAt(labels.timeBasis, row) ?? "aligned",
      atFloor: labelAt(labels.atFloor, row) === "true",
      devoiced: null,
      devoicedBasis: null,
      durationMs: unit === "mora" ? durationMs * rate : durationMs,
    };
  }
}

/**
 * One sound in place of all neighbours that the contrasts take alike, so that there are few cells: a consonant about a
 * vowel, a vowel about a consonant. Null for tokens that no contrast compares.
 */
function neighbourOf(kind: string | null, before: string, after: string): "k" | "a" | null {
  if (kind === "vowel") return isConsonant(before) && isConsonant(after) ? "k" : null;
  return isVowel(before) ? "a" : null;
}

/** Rates that part slow from middle and middle from fast, by code of the speaker. */
function thirdsBySpeaker(
  { labels, numbers }: TokenTable,
  rows: Uint32Array,
): Map<number, readonly [number, number]> {
  const rates = new Map<number, number[]>();
  for (const row of rows) {
    const speaker = labels.speaker.codes[row]!;
    const own = rates.get(speaker);
    if (own) own.push(numbers.speechRateMoraePerSec[row]!);
    else rates.set(speaker, [numbers.speechRateMoraePerSec[row]!]);
  }
  return new Map([...rates].map(([speaker, own]) => [speaker, [quantile(own, 1 / 3), quantile(own, 2 / 3)]]));
}

function bandOf(rate: number, [low, high]: readonly [number, number]): RateBand {
  return rate <= low ? "slow" : rate <= high ? "middle" : "fast";
}
