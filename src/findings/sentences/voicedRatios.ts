import type { RatioRow } from "../../estimates/ratios.ts";
import { interfaceText } from "../../interface/interfaceText.ts";
import { joinWords, roundPercent } from "../format.ts";
import { soundName } from "../soundNames.ts";
import { isFirm, ratioRange, times } from "./ratios.ts";

/** Share of short vowels that are devoiced from which on it must be said: it makes them shorter and the ratio larger. */
export const noticeableDevoicing = 0.05;

/** Whether so many of a row's short vowels are devoiced that its ratio needs the one without them beside it. */
export function manyDevoiced({ short }: Pick<RatioRow, "short">): boolean {
  return short.devoiced !== null && short.devoiced >= noticeableDevoicing * short.tokens;
}

/**
 * What devoiced short vowels do to the ratios: how many there are, and the ratios against voiced ones alone where the
 * tokens were at hand. Empty where hardly any is devoiced.
 */
export function voicedSentence(rows: readonly RatioRow[]): string {
  const many = rows.filter(manyDevoiced);
  if (many.length === 0) return "";
  const sum = (pick: (row: RatioRow) => number) => many.reduce((total, row) => total + pick(row), 0);
  const share = roundPercent(sum(({ short }) => short.devoiced ?? 0) / sum(({ short }) => short.tokens));
  const say = interfaceText().sentences.ratios;
  const names = joinWords(many.map(({ by }) => soundName(String(by.phone))));
  const parts = many.flatMap((row) =>
    row.voiced === null || !isFirm(row)
      ? []
      : [
          say.end(
            soundName(String(row.by.phone)),
            times(row, row.voiced.estimate),
            ratioRange({ ...row.voiced, level: row.level }),
          ),
        ],
  );
  return parts.length === 0 ? say.withDevoiced(share, names) : say.voiced(share, names, joinWords(parts));
}
