import { enoughVowels } from "../../estimates/rateSafety.ts";
import type { RateRow } from "../../estimates/rates.ts";
import type { RatioRow } from "../../estimates/ratios.ts";
import { interfaceText } from "../../interface/interfaceText.ts";
import { formatAmount, formatCount, intervalName, joinWords, percentRange, roundPercent } from "../format.ts";
import { soundName } from "../soundNames.ts";
import { compareRatios } from "./ratios.ts";
import { voicedSentence } from "./voicedRatios.ts";

function one({ by, estimate, low, high, level }: RateRow, withLevel: boolean): string {
  const name = soundName(String(by.phone));
  if (estimate === null || low === null || high === null) return name;
  const interval = percentRange(low, high);
  const named = withLevel ? `${intervalName(level)} ${interval}` : interval;
  return interfaceText().sentences.rates.answer.rate(name, roundPercent(estimate), named);
}

/**
 * The rates of some vowels in one place, as one sentence for the start page. `where` begins it. Marks from a text rule
 * are told as what the rule expects, one speaker is called one speaker, and of a vowel that was met fewer than ten times
 * only that is told.
 */
export function answerRates(where: string, rows: readonly RateRow[]): string {
  const say = interfaceText().sentences.rates.answer;
  const evidence = rows.filter((row) => row.estimate !== null);
  if (evidence.length === 0) {
    const [marked, cases] = [sum(rows, (row) => row.devoiced), sum(rows, (row) => row.tokens)];
    const names = joinWords(rows.map((row) => soundName(String(row.by.phone))));
    return say.expected(where, formatCount(marked), formatAmount(cases, "case"), names);
  }
  const enough = evidence.filter((row) => row.tokens >= enoughVowels);
  const few = evidence.filter((row) => row.tokens < enoughVowels).map(counted);
  if (enough.length === 0) return say.tooFew(where, joinWords(few));
  const alone = enough.every((row) => row.scope === "one speaker");
  const who = alone ? null : formatAmount(Math.max(...enough.map((row) => row.speakers)), "speaker");
  const vowels = formatAmount(
    sum(enough, (row) => row.tokens),
    "vowel",
  );
  const found = say.found(where, who, joinWords(enough.map((row, i) => one(row, i === 0))), vowels);
  return few.length === 0 ? found : `${found}${say.besides(joinWords(few))}`;
}

/** A vowel and how often it was met, where that is too seldom for a rate. */
function counted({ by, tokens }: RateRow): string {
  return interfaceText().sentences.rates.answer.counted(
    soundName(String(by.phone)),
    formatAmount(tokens, "vowel"),
  );
}

function sum<Row>(rows: readonly Row[], pick: (row: Row) => number): number {
  return rows.reduce((total, row) => total + pick(row), 0);
}

/** The ratios of several sounds as one sentence, and on how much they rest. */
export function answerRatios(rows: readonly RatioRow[]): string {
  const named = rows.map((row) => ({ name: soundName(String(row.by.phone)), row }));
  const contrast = rows[0]?.contrast ?? "vowel-length";
  const long = formatAmount(
    sum(rows, (row) => row.long.tokens),
    contrast === "gemination" ? "doubled consonant" : "long vowel",
  );
  const alone = rows.every((row) => row.scope === "one speaker");
  const counted = interfaceText().sentences.ratios.counted(contrast, long, alone);
  return [compareRatios(named), voicedSentence(rows), counted]
    .filter((sentence) => sentence !== "")
    .join(" ");
}
