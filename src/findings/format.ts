import { interfaceText } from "../interface/interfaceText.ts";

/** A number and its unit stay on one line. */
const space = "\u00a0";
const counts = new Intl.NumberFormat("en");
const words = () => interfaceText().format;

/** `1,234`. */
export function formatCount(count: number): string {
  return counts.format(count);
}

/** `1,234 vowels`, `1 vowel`, in the language of the page; the English noun names what is counted. */
export function formatAmount(count: number, one: string, several = `${one}s`): string {
  return words().amount(formatCount(count), one, several, count === 1);
}

/** A share from 0 to 1 as per cent with one decimal place: `87.3 %`. */
export function formatPercent(share: number): string {
  return words().percent((100 * share).toFixed(1));
}

/** A share in running text: whole per cent, but never rounded to none or all. */
export function roundPercent(share: number): string {
  if (share > 0 && share < 0.005) return words().lessThan(words().percent("0.5"));
  if (share < 1 && share > 0.995) return words().moreThan(words().percent("99.5"));
  return words().percent(`${Math.round(100 * share)}`);
}

/** Two shares as bounds in running text: `77 to 86 %`, `less than 0.5 % to 4 %`. */
export function percentRange(low: number, high: number): string {
  const [from, to] = [roundPercent(low), roundPercent(high)];
  const plain = /^\d+\s?%$/.test(from) && /^\d+\s?%$/.test(to);
  return words().range(plain ? from.replace(/\s?%$/, "") : from, to);
}

/** `95 % interval`. */
export function intervalName(level: number): string {
  return words().interval(words().percent(`${Math.round(100 * level)}`));
}

/** `2.40`. */
export function formatRatio(ratio: number): string {
  return ratio.toFixed(2);
}

/** `62 ms`. */
export function formatMs(ms: number): string {
  return `${Math.round(ms)}${space}ms`;
}

/** Names joined as in a sentence: `a`, `a and b`, `a, b and c`. */
export function joinWords(names: readonly string[], last: "and" | "or" | "against" = "and"): string {
  return words().list(names, last);
}

/** The text with its first letter in upper case, as a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A number with so many decimals and a minus sign, not a hyphen; what rounds to 0 has no sign. */
export function formatDecimals(value: number, digits: number): string {
  const text = value.toFixed(digits);
  return text.replace("-", Number(text) === 0 ? "" : "−");
}
