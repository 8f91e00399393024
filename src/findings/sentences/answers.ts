import type { RateRow } from "../../estimates/rates.ts";
import type { RatioRow } from "../../estimates/ratios.ts";
import { formatAmount, formatCount, intervalName, joinWords, percentRange, roundPercent } from "../format.ts";
import { soundName } from "../soundNames.ts";
import { compareRatios } from "./ratios.ts";

function one({ by, estimate, low, high, level }: RateRow, withLevel: boolean): string {
  const name = soundName(String(by.phone));
  if (estimate === null || low === null || high === null) return name;
  const interval = `${withLevel ? `${intervalName(level)} ` : ""}${percentRange(low, high)}`;
  return `${name} in ${roundPercent(estimate)} of cases (${interval})`;
}

/**
 * The rates of some vowels in one place, as one sentence for the start page. `where` begins it. Marks from a text rule
 * are told as what the rule expects, and one speaker is called one speaker.
 */
export function answerRates(where: string, rows: readonly RateRow[]): string {
  const evidence = rows.filter((row) => row.estimate !== null);
  const cases = rows.reduce((sum, row) => sum + row.tokens, 0);
  if (evidence.length === 0) {
    const marked = rows.reduce((sum, row) => sum + row.devoiced, 0);
    const names = joinWords(rows.map((row) => soundName(String(row.by.phone))));
    return `${where}, a text rule expects ${formatCount(marked)} of ${formatAmount(cases, "case")} of ${names} to be devoiced. That is predicted by rule; nobody listened.`;
  }
  const alone = evidence.every((row) => row.scope === "one speaker");
  const who = alone
    ? "this one speaker devoices"
    : `${formatAmount(Math.max(...evidence.map((row) => row.speakers)), "speaker")} devoice`;
  const total = evidence.reduce((sum, row) => sum + row.tokens, 0);
  const whose = alone ? ", and nothing follows about others" : "";
  return `${where}, ${who} ${joinWords(evidence.map((row, i) => one(row, i === 0)))}. Counted on ${formatAmount(total, "vowel")}${whose}.`;
}

/** The ratios of several sounds as one sentence, and on how much they rest. */
export function answerRatios(rows: readonly RatioRow[]): string {
  const long = rows.reduce((sum, row) => sum + row.long.tokens, 0);
  const named = rows.map((row) => ({ name: soundName(String(row.by.phone)), row }));
  const whose = rows.every((row) => row.scope === "one speaker")
    ? ", and nothing follows about other speakers"
    : "";
  const what = rows[0]?.contrast === "gemination" ? "doubled consonant" : "long vowel";
  return `${compareRatios(named)} Counted on ${formatAmount(long, what)}${whose}.`;
}
