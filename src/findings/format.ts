/** A number and its unit stay on one line. */
const space = "\u00a0";
const counts = new Intl.NumberFormat("en");

/** `1,234`. */
export function formatCount(count: number): string {
  return counts.format(count);
}

/** `1,234 vowels`, `1 vowel`. */
export function formatAmount(count: number, one: string, several = `${one}s`): string {
  return `${formatCount(count)} ${count === 1 ? one : several}`;
}

/** A share from 0 to 1 as per cent with one decimal place: `87.3 %`. */
export function formatPercent(share: number): string {
  return `${(100 * share).toFixed(1)}${space}%`;
}

/** A share in running text: whole per cent, but never rounded to none or all. */
export function roundPercent(share: number): string {
  if (share > 0 && share < 0.005) return `less than 0.5${space}%`;
  if (share < 1 && share > 0.995) return `more than 99.5${space}%`;
  return `${Math.round(100 * share)}${space}%`;
}

/** Two shares as bounds in running text: `77 to 86 %`, `less than 0.5 % to 4 %`. */
export function percentRange(low: number, high: number): string {
  const [from, to] = [roundPercent(low), roundPercent(high)];
  return /^\d+\s%$/.test(from) && /^\d+\s%$/.test(to) ? `${from.slice(0, -2)} to ${to}` : `${from} to ${to}`;
}

/** `95 % interval`. */
export function intervalName(level: number): string {
  return `${Math.round(100 * level)}${space}% interval`;
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
export function joinWords(words: readonly string[], last = "and"): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}

/** The text with its first letter in upper case, as a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
