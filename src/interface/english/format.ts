/** How numbers, amounts and lists stand in a sentence. */
export const format = {
  percent: (digits: string) => `${digits}\u00a0%`,
  lessThan: (share: string) => `less than ${share}`,
  moreThan: (share: string) => `more than ${share}`,
  /** Two bounds, the unit once where both have the same. */
  range: (from: string, to: string) => `${from} to ${to}`,
  /** `95 % interval`; `percent` as `95 %`. */
  interval: (percent: string) => `${percent} interval`,
  /** `1,234 vowels`: a count with its noun, which this language inflects by itself. */
  amount: (count: string, one: string, several: string, single: boolean) =>
    `${count} ${single ? one : several}`,
  /** Names joined as in a sentence: `a`, `a and b`, `a, b and c`. */
  list: (names: readonly string[], last: string) =>
    names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} ${last} ${names.at(-1)}`,
  pause: "pause",
  firstOfDoubled: "ッ (first part of a doubled consonant)",
};
