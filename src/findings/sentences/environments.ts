import type { RateRow } from "../../estimates/rates.ts";
import { interfaceText } from "../../interface/interfaceText.ts";
import { roundPercent } from "../format.ts";
import { soundName } from "../soundNames.ts";
import { type DifferenceOf, judgeExtremes } from "./judgeExtremes.ts";

/** A rate with the sounds before and after the vowel; `after` may be `voiced`, all voiced sounds together. */
export interface EnvironmentRate {
  readonly before: string;
  readonly after: string;
  readonly row: RateRow;
}

/** Intervals at most this wide count as enough to rank surroundings. */
const firmWidth = 0.3;

function around({ before, after, row }: EnvironmentRate): string {
  const { between } = interfaceText().sentences.environments;
  return between(soundName(before), soundName(after), roundPercent(row.estimate ?? 0));
}

/**
 * What a grid of surroundings shows: the extremes among those whose intervals are narrow enough to be ranked. Voiced
 * surroundings are left out: that vowels keep their voice there needs no finding. Whether the one extreme surely lies
 * above the other is judged by the interval of their difference (`judgeExtremes`); where that is not known, the order is
 * left open, since the extremes of many are chosen for lying far apart.
 */
export function environmentsSentence(
  cells: readonly EnvironmentRate[],
  differenceOf: DifferenceOf = () => null,
): string {
  const words = interfaceText().sentences.environments;
  if (cells.length === 0) return words.noMarks;
  if (cells[0]!.row.estimate === null) return words.byRule;
  const firm = cells
    .filter(({ after, row }) => after !== "voiced" && row.high! - row.low! <= firmWidth)
    .sort((a, b) => b.row.estimate! - a.row.estimate!);
  const [top, bottom] = [firm[0], firm.at(-1)];
  if (top === undefined || bottom === undefined || top === bottom) return words.tooWide;
  const judged = judgeExtremes(top.row, bottom.row, firm.length, differenceOf);
  return words.found(
    ...([around(top), around(bottom), judged?.difference ?? null] as const),
    ...([judged?.sure ?? false, firm.length > 2] as const),
  );
}
