import { type CounterRule, counterRule } from "./counterTable.ts";
import { geminateEnd, readDecimal, readInteger } from "./numbers.ts";

/** A number as written in digits; `fraction` is "" for whole numbers. */
export interface NumberDigits {
  readonly whole: string;
  readonly fraction: string;
}

/** Readings, the usual one first. */
export type Readings = readonly string[];

const hToP: Readonly<Record<string, string>> = { ハ: "パ", ヒ: "ピ", フ: "プ", ヘ: "ペ", ホ: "ポ" };
const hToB: Readonly<Record<string, string>> = { ハ: "バ", ヒ: "ビ", フ: "ブ", ヘ: "ベ", ホ: "ボ" };

const replaceFirst = (kana: string, first: string | undefined) =>
  first === undefined ? kana : first + kana.slice(1);
const isLoan = (counter: string) => /^[ァ-ヺ]/u.test(counter) && !/^[ヶヵカ][月国所]/u.test(counter);

/** Loan counters double after 10 only (ジュッキロ), キロ after 6 and センチ, トン after 1 and 8 too. */
function joinLoan(number: string, kana: string): string {
  if (!/^[カ-ソタ-トパピプペポ]/u.test(kana) || /^[ガギグゲゴザジズゼゾダヂヅデド]/u.test(kana))
    return number + kana;
  if (/ジュー$/u.test(number)) return geminateEnd(number, "") + kana;
  if (/^[キカクケコ]/u.test(kana) && /ロク$/u.test(number)) return geminateEnd(number, "ロク") + kana;
  return (/^[サシスセソタチツテト]/u.test(kana) ? geminateEnd(number, "") : number) + kana;
}

function join(number: string, counter: string, kana: string, rule: CounterRule): string {
  if (isLoan(counter)) return joinLoan(number, kana);
  const first = kana[0]!;
  if (/(?:サン|[セゼ]ン|マン|ナン)$/u.test(number))
    return number + replaceFirst(kana, rule.afterN ?? hToB[first]);
  if (/ヨン$/u.test(number)) return number + replaceFirst(kana, rule.afterYon);
  if (rule.neverDoubles) return number + kana;
  const doubled = geminateEnd(number, /[カキクケコハヒフヘホ]/u.test(first) ? "ロクヒャク" : "");
  if (doubled === number || !/[カキクケコサシスセソタチツテトハヒフヘホパピプペポ]/u.test(first))
    return number + kana;
  return doubled + replaceFirst(kana, hToP[first]);
}

/** Number readings before a counter: its last digit may go by another name. */
function numberReadings({ whole, fraction }: NumberDigits, rule: CounterRule): Readings {
  const reading = fraction === "" ? readInteger(whole) : readDecimal(whole, fraction);
  if (reading === null) return [];
  const last = Number((fraction || whole).at(-1));
  const named = whole.length > 1 && last === 0 ? undefined : rule.digit?.[last];
  const usual = readInteger(`${last}`)!;
  if (!named || !reading.endsWith(usual)) return [reading];
  return named.map((name) => reading.slice(0, reading.length - usual.length) + name);
}

/** Joins a number that is given by its reading, as ナン of 何本 ナンボン, with a counter. */
export function joinCounter(number: string, counter: string, kana: string): string {
  return join(number, counter, kana, counterRule(counter)?.rule ?? {});
}

/** ジュッ and ジッ are both heard before a doubled consonant. */
const withOldTen = (readings: Readings): Readings => [
  ...new Set([
    ...readings,
    ...readings.filter((one) => /ジュッ/u.test(one)).map((one) => one.replace("ジュッ", "ジッ")),
  ]),
];

/**
 * Readings of a number with its counter, as 3匹 サンビキ, 10本 ジュッポン, 20日 ハツカ, the usual one first.
 * `kana` is the counter's own reading. Empty when the number is too long to have a name.
 */
export function readCounted(number: NumberDigits, counter: string, kana: string): Readings {
  const { key, rule } = counterRule(counter) ?? { key: "", rule: {} as CounterRule };
  const own = rule.kana ?? kana;
  const counterKana = key === counter ? own : kana;
  const whole = number.fraction === "" ? rule.whole?.[Number(number.whole)] : undefined;
  if (whole && counterKana.startsWith(own))
    return withOldTen(whole.map((reading) => reading + counterKana.slice(own.length)));
  return withOldTen(numberReadings(number, rule).map((name) => join(name, counter, counterKana, rule)));
}
