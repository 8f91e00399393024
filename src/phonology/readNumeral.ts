import { kanjiToDigits, readDecimal, readDigits, readInteger } from "./numbers.ts";
import { type NumberDigits, readCounted } from "./readCounted.ts";

/** A numeral read alone, and its digits where a counter may join it. */
export interface Numeral {
  readonly readings: readonly string[];
  readonly digits: NumberDigits | null;
}

const unread: Numeral = { readings: [], digits: null };
const known = (readings: readonly (string | null)[], digits: NumberDigits | null = null): Numeral => ({
  readings: readings.filter((reading) => reading !== null),
  digits,
});

/** Two neighbouring kanji digits mean "two or three": 二三 ニサン, 七八 シチハチ. */
function neighbours(text: string): string | null {
  if (!/^[一二三四五六七八九]{2}$/u.test(text)) return null;
  const [first, second] = [...text].map((kanji) => "一二三四五六七八九".indexOf(kanji) + 1) as [
    number,
    number,
  ];
  if (second !== first + 1) return null;
  const names = ["", "イチ", "ニ", "サン", "シ", "ゴ", "ロク", "シチ", "ハチ", "キュー"];
  return `${names[first]}${second === 4 ? "ヨン" : names[second]}`;
}

/** 1.5億 イッテンゴオク. */
function readLarge(whole: string, fraction: string, unit: string): string | null {
  const decimal = readDecimal(whole, fraction);
  return decimal === null ? null : `${decimal}${{ 万: "マン", 億: "オク", 兆: "チョー" }[unit]}`;
}

/** Clock times as 7:30, joined by their counters. */
function readTime(hours: string, minutes: string): string {
  const hour = readCounted({ whole: `${Number(hours)}`, fraction: "" }, "時", "ジ")[0]!;
  if (Number(minutes) === 0) return hour;
  return hour + readCounted({ whole: `${Number(minutes)}`, fraction: "" }, "分", "フン")[0]!;
}

const codeParts = (text: string) => text.split("-").map(readDigits);

/**
 * A numeral in NFKC: whole numbers with or without commas, decimals, clock times, numbers in parts joined by
 * hyphens, and kanji numerals. Anything else has no reading.
 */
export function readNumeral(text: string): Numeral {
  const plain = text.replace(/[‐‑–−]/gu, "-").replace(/(?<=\d),(?=\d{3}(?!\d))/gu, "");
  const pair = neighbours(plain);
  if (pair) return known([pair]);
  const number = /^(\d+)(?:\.(\d+))?$/u.exec(plain);
  if (number) {
    const digits = { whole: number[1]!, fraction: number[2] ?? "" };
    const { whole, fraction } = digits;
    return known([fraction === "" ? readInteger(whole) : readDecimal(whole, fraction)], digits);
  }
  const large = /^(\d+)\.(\d+)([万億兆])$/u.exec(plain);
  if (large) return known([readLarge(large[1]!, large[2]!, large[3]!)]);
  const time = /^([01]?\d|2[0-4]):([0-5]\d)$/u.exec(plain);
  if (time) return known([readTime(time[1]!, time[2]!)]);
  if (/^\d+(?:-\d+){1,3}$/u.test(plain))
    return known([codeParts(plain).join("ノ"), codeParts(plain).join("、")]);
  const digits = kanjiToDigits(plain);
  return digits === null ? unread : known([readInteger(digits)], { whole: digits, fraction: "" });
}
