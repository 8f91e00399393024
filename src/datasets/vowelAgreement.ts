const rows = [
  ["a", "アァカガサザタダナハバパマヤャラワヮヵ"],
  ["i", "イィキギシジチヂニヒビピミリヰ"],
  ["u", "ウゥクグスズツヅヌフブプムユュルヴ"],
  ["e", "エェケゲセゼテデネヘベペメレヱヶ"],
  ["o", "オォコゴソゾトドノホボポモヨョロヲ"],
] as const;
const vowelOf = new Map(rows.flatMap(([vowel, kana]) => [...kana].map((letter) => [letter, vowel] as const)));
const small = /[ァィゥェォャュョヮ]/;

/** Vowels of a katakana reading in order: `シュヴァーイ` is `uaai`. A small kana replaces the vowel it is written to. */
export function vowelsOfReading(reading: string): string {
  let vowels = "";
  let previous = "";
  for (const letter of reading) {
    if (letter === "ー") vowels += vowels.at(-1) ?? "";
    const vowel = vowelOf.get(letter);
    if (vowel === undefined) {
      previous = letter === "ー" ? previous : "";
      continue;
    }
    vowels = small.test(letter) && previous !== "" ? vowels.slice(0, -1) + vowel : vowels + vowel;
    previous = letter;
  }
  return vowels;
}

/** Vowels of phone labels in order, devoiced ones too; `a:` counts twice. */
export function vowelsOfLabels(labels: readonly string[]): string {
  return labels
    .map((label) => (/^[aiueoAIUEO]:?$/.test(label) ? label[0]!.toLowerCase().repeat(label.length) : ""))
    .join("");
}

/** 1 for equal strings, 0 for nothing in common: one minus the edit distance over the longer length; 0 when one is empty. */
export function agreement(a: string, b: string): number {
  if (a.length === 0 || b.length === 0) return 0;
  let above = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const change = above[column - 1]! + (a[row - 1] === b[column - 1] ? 0 : 1);
      current.push(Math.min(change, above[column]! + 1, current[column - 1]! + 1));
    }
    above = current;
  }
  return 1 - above[b.length]! / Math.max(a.length, b.length);
}
