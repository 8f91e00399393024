import type { Cells } from "../../estimates/cells.ts";
import type { Dim } from "../../estimates/dimensions.ts";
import { pairedRatio } from "../../estimates/pairedRatio.ts";
import { durationRatios } from "../../estimates/ratios.ts";
import { ratiosWithWords } from "../../estimates/ratiosWithWords.ts";
import { clusteredRatioMethod, oneSpeakerRatio } from "../../messages/estimates.ts";
import { type DurationCut, durationStrata } from "./durationStrata.ts";
import type { RuleEvidence } from "./evidence.ts";
import { boundByFloorShares } from "./floorBound.ts";
import type { Reading, ReadOptions } from "./reading.ts";
import { partOf, speakerDoubts } from "./readRates.ts";
import type { RuleContrast } from "./ruleSchema.ts";
import { allowingForWords, wordDoubts } from "./wordDoubts.ts";

type Length = Extract<RuleContrast, { kind: "length-ratio" }>;
type Durations = Extract<RuleContrast, { kind: "duration-ratio" }>;

/**
 * Long to short vowels, or geminates to single consonants, each phone compared with itself. For a whole corpus with its
 * tokens at hand the interval also allows for words.
 */
export function readLengthRatio(
  { cells, tokens }: RuleEvidence,
  { of: contrast, where: filter = {}, surroundings = "consonants" }: Length,
  column: Dim | null,
  { level, theseWords = false }: ReadOptions,
): Reading[] {
  const by: Dim[] = ["dataset", "labelSet", ...(column === null ? [] : [column])];
  const asked = { contrast, filter, surroundings, by, level };
  const found = durationRatios(cells, asked);
  const withWords = column === null && tokens !== null && !theseWords;
  const { rows } = withWords ? ratiosWithWords(found, tokens, asked) : found;
  return rows.flatMap((row) => {
    const part = partOf(column, row.by);
    if (part === undefined) return [];
    const { low, high } = allowingForWords(row);
    const interval = low === null || high === null ? null : { low, high };
    const floor = interval && boundByFloorShares(interval, row.long.atFloorShare, row.short.atFloorShare);
    return [
      {
        ...{
          dataset: row.dataset,
          labelSet: row.labelSet,
          basis: row.basis,
          part,
          evidence: true,
          reason: null,
        },
        ...{ estimate: row.estimate, interval, judged: floor?.judged ?? null, bound: floor?.bound ?? null },
        ...{ tokens: [row.long.tokens, row.short.tokens], speakers: row.speakers },
        sides: [row.long.geometricMeanMs, row.short.geometricMeanMs],
        method: row.method,
        warnings: [...speakerDoubts(row.speakers), ...wordDoubts(row), ...(floor?.warnings ?? [])],
      },
    ];
  });
}

/** Geometric mean duration of the first cut by that of the second, compared only within the rule's columns and a speaker. */
export function readDurationRatio(
  cells: Cells,
  { first, second, within }: Durations,
  column: Dim | null,
  { level }: ReadOptions,
): Reading[] {
  return durationStrata(cells, first.where, second.where, within, column).flatMap((group) => {
    const part = partOf(column, group.by);
    if (part === undefined) return [];
    const found = pairedRatio(group.strata, level);
    const interval = found === null ? null : { low: found.low, high: found.high };
    const floor = interval && boundByFloorShares(interval, floorShare(group.first), floorShare(group.second));
    const speakers = new Set(group.strata.map((stratum) => stratum.speaker)).size;
    return [
      {
        ...{
          dataset: group.dataset,
          labelSet: group.labelSet,
          basis: group.basis,
          part,
          evidence: true,
          reason: null,
        },
        ...{ estimate: found?.estimate ?? null, interval },
        ...{ judged: floor?.judged ?? null, bound: floor?.bound ?? null },
        ...{ tokens: [group.first.tokens, group.second.tokens], speakers },
        sides: [geometricMean(group.first), geometricMean(group.second)],
        method: speakers > 1 ? clusteredRatioMethod(speakers) : oneSpeakerRatio(),
        warnings: [...speakerDoubts(speakers), ...(floor?.warnings ?? [])],
      },
    ];
  });
}

function floorShare({ tokens, atFloor }: DurationCut): number {
  return tokens === 0 ? 0 : atFloor / tokens;
}

function geometricMean({ tokens, sumLogMs }: DurationCut): number | null {
  return tokens === 0 ? null : Math.exp(sumLogMs / tokens);
}
