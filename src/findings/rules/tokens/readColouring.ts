import { colouredTokens, compareColouring } from "../../../estimates/colouring.ts";
import type { Source } from "../../../estimates/explain/sources.ts";
import { smallestOf } from "../../../estimates/extremeOf.ts";
import type { TokenTable } from "../../../estimates/tokenTable.ts";
import { consonantUnheard, leastOfMany, marksByRule, noConsonantHeard } from "../../../messages/rules.ts";
import type { TokenContrast } from "../tokenContrasts.ts";
import type { TokenAnswer } from "./tokenAnswer.ts";

/** Centre of gravity of a consonant before /i/ less that before /u/; of several consonants the smallest difference. */
export function readColouring(
  table: TokenTable,
  source: Source,
  { consonants, vowels }: Extract<TokenContrast, { kind: "colouring" }>,
  level: number,
): TokenAnswer {
  const heard = consonants.map((consonant) => {
    const coloured = colouredTokens(table, source, consonant);
    const at = (asked: number) => compareColouring(table, source, coloured, consonant, vowels, asked);
    return { consonant, coloured, at, found: at(level) };
  });
  const both = heard.filter(({ found }) => found.difference !== null);
  const left = heard.filter(({ found }) => found.difference === null);
  if (both.length === 0) {
    const byRule = heard.some(({ coloured: { evidence } }) => evidence.basis === null && evidence.marked > 0);
    return { unreadable: byRule ? marksByRule() : noConsonantHeard(consonants) };
  }
  const smallest = smallestOf(
    both.map(({ at, found }) => ({
      estimate: found.difference!.estimate,
      at: (asked) => {
        const { low, high } = (asked === level ? found : at(asked)).difference!;
        return { low: low ?? Number.NEGATIVE_INFINITY, high: high ?? Number.POSITIVE_INFINITY };
      },
    })),
    level,
  )!;
  const { consonant, found } = both[smallest.place]!;
  const least = (side: "beforeI" | "beforeU") => Math.min(...both.map((one) => one.found[side]?.tokens ?? 0));
  return {
    basis: found.basis!,
    ...{ estimate: smallest.estimate, interval: { low: smallest.low, high: smallest.high } },
    ...{
      tokens: [least("beforeI"), least("beforeU")],
      speakers: Math.min(...both.map((one) => one.found.speakers)),
    },
    sides: [found.beforeI?.meanHz ?? null, found.beforeU?.meanHz ?? null],
    ...{ detail: `/${consonant}/`, reason: null },
    method: both.length > 1 ? `${found.method}; ${leastOfMany(both.length, "consonants")}` : found.method,
    warnings: [...found.warnings, ...left.map((one) => consonantUnheard(one.consonant, one.found.reason!))],
  };
}
