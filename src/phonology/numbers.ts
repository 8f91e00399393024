/** Readings of numbers in katakana as pronounced. Common practice, no published source; checked against Open JTalk. */

const digitNames = ["ゼロ", "イチ", "ニ", "サン", "ヨン", "ゴ", "ロク", "ナナ", "ハチ", "キュー"] as const;
/** Digits read one by one lengthen ニ and ゴ. */
const spelledNames = [
  "ゼロ",
  "イチ",
  "ニー",
  "サン",
  "ヨン",
  "ゴー",
  "ロク",
  "ナナ",
  "ハチ",
  "キュー",
] as const;
const myriads = ["", "マン", "オク", "チョー", "ケー"] as const;
const units: Readonly<Record<number, { plain: string; changed: Readonly<Record<number, string>> }>> = {
  3: { plain: "セン", changed: { 1: "セン", 3: "サンゼン", 8: "ハッセン" } },
  2: { plain: "ヒャク", changed: { 1: "ヒャク", 3: "サンビャク", 6: "ロッピャク", 8: "ハッピャク" } },
  1: { plain: "ジュー", changed: { 1: "ジュー" } },
  0: { plain: "", changed: {} },
};

const digitName = (digit: number) => digitNames[digit]!;

/** A group of up to four digits, without its myriad; "" for nought. */
function readGroup(group: string): string {
  return [...group]
    .map((letter, at) => {
      const digit = Number(letter);
      const { plain, changed } = units[group.length - 1 - at]!;
      return digit === 0 ? "" : (changed[digit] ?? `${digitName(digit)}${plain}`);
    })
    .join("");
}

function readMyriad(group: string, myriad: string): string {
  const reading = readGroup(group);
  if (reading === "") return "";
  const thousand = myriad !== "" && /^1\d{3}$/u.test(group) ? `イッ${reading}` : reading;
  return /^[チケ]/u.test(myriad) ? `${geminateEnd(thousand, "")}${myriad}` : `${thousand}${myriad}`;
}

/** The end of a number before a consonant that doubles: イチ → イッ, ハチ → ハッ, ジュー → ジュッ, and `more`. */
export function geminateEnd(number: string, more: "" | "ロク" | "ロクヒャク"): string {
  if (/イチ$|ハチ$/u.test(number)) return `${number.slice(0, -1)}ッ`;
  if (/ジュー$/u.test(number)) return `${number.slice(0, -1)}ッ`;
  if (more !== "" && /ロク$/u.test(number)) return `${number.slice(0, -1)}ッ`;
  if (more === "ロクヒャク" && /[ヒビピ]ャク$/u.test(number)) return `${number.slice(0, -1)}ッ`;
  return number;
}

/** Digits read one by one, as in a telephone number or after a decimal point. */
export function readDigits(digits: string): string {
  return [...digits].map((digit) => spelledNames[Number(digit)]).join("");
}

/**
 * A whole number of up to 20 digits, as 365 サンビャクロクジューゴ. A leading nought makes it a code that is
 * read digit by digit; null for more digits than have names here.
 */
export function readInteger(digits: string): string | null {
  if (/^0\d/u.test(digits)) return readDigits(digits);
  if (digits.length > 4 * myriads.length) return null;
  if (Number(digits) === 0) return digitName(0);
  let reading = "";
  for (let myriad = 0; myriad * 4 < digits.length; myriad++) {
    const end = digits.length - myriad * 4;
    reading = readMyriad(digits.slice(Math.max(0, end - 4), end), myriads[myriad]!) + reading;
  }
  return reading;
}

/** A decimal fraction: 3.25 サンテンニーゴー, 1.5 イッテンゴ, 0.5 レーテンゴ, 2.5 ニーテンゴ. */
export function readDecimal(digits: string, fraction: string): string | null {
  const whole = readInteger(digits);
  if (whole === null) return null;
  const lengthened = whole.replace(/ゼロ$/u, "レー").replace(/([ニゴ])$/u, "$1ー");
  const decimals = fraction.length === 1 ? digitName(Number(fraction)) : readDigits(fraction);
  return `${geminateEnd(lengthened, "")}テン${decimals}`;
}

const kanjiDigits = "〇一二三四五六七八九";
const kanjiUnits: Readonly<Record<string, bigint>> = { 十: 10n, 百: 100n, 千: 1000n };
const kanjiMyriads: Readonly<Record<string, bigint>> = {
  万: 10n ** 4n,
  億: 10n ** 8n,
  兆: 10n ** 12n,
  京: 10n ** 16n,
};

/** Kanji numerals as decimal digits, 三百六十五 → 365, 二〇二四 → 2024, 3万5千 → 35000; null if they are none. */
export function kanjiToDigits(numerals: string): string | null {
  const digits = numerals.replace(/[〇一二三四五六七八九]/gu, (kanji) => `${kanjiDigits.indexOf(kanji)}`);
  if (/^\d+$/u.test(digits)) return digits;
  let total = 0n;
  let group = 0n;
  let run = "";
  for (const letter of digits) {
    if (/\d/u.test(letter)) run += letter;
    else if (letter in kanjiUnits) {
      group += (run === "" ? 1n : BigInt(run)) * kanjiUnits[letter]!;
      run = "";
    } else if (letter in kanjiMyriads) {
      group += BigInt(run || "0");
      total += (group === 0n ? 1n : group) * kanjiMyriads[letter]!;
      group = 0n;
      run = "";
    } else return null;
  }
  return `${total + group + BigInt(run || "0")}`;
}
