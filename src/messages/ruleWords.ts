/** Wording of what the words behind a rule do to its verdict. */

export function widerByWords(words: number): string {
  return `The interval also counts the sounds of each of the ${words} words as belonging together, and is wider for that.`;
}

export function theseWordsOnly(words: number): string {
  return words === 1
    ? "All of these sounds stand in one word: this speaks of that word only."
    : `These sounds stand in ${words} words: this speaks of those words only.`;
}

export function fewWordsCarry(): string {
  return "One word holds nearly all sounds of one side, so that the interval cannot allow for differences between words.";
}
