const rows: Readonly<Record<string, string>> = {
  "": "アイウエオ",
  k: "カキクケコ",
  g: "ガギグゲゴ",
  s: "サ スセソ",
  z: "ザ ズゼゾ",
  t: "タ  テト",
  d: "ダ  デド",
  n: "ナニヌネノ",
  h: "ハヒ ヘホ",
  b: "バビブベボ",
  p: "パピプペポ",
  m: "マミムメモ",
  r: "ラリルレロ",
  y: "ヤ ユ ヨ",
  w: "ワ    ",
};
const glides: Readonly<Record<string, string>> = {
  ky: "キ",
  gy: "ギ",
  ny: "ニ",
  hy: "ヒ",
  by: "ビ",
  py: "ピ",
  my: "ミ",
  ry: "リ",
  sh: "シ",
  ch: "チ",
  j: "ジ",
  ty: "テ",
  dy: "デ",
};
const loans: Readonly<Record<string, readonly string[]>> = {
  f: ["ファ", "フィ", "フ", "フェ", "フォ"],
  v: ["ヴァ", "ヴィ", "ヴ", "ヴェ", "ヴォ"],
  ts: ["ツァ", "ツィ", "ツ", "ツェ", "ツォ"],
  w: ["ワ", "ウィ", "ウゥ", "ウェ", "ウォ"],
};
const single: Readonly<Record<string, string>> = {
  si: "シ",
  zi: "ジ",
  ti: "ティ",
  tu: "トゥ",
  di: "ディ",
  du: "ドゥ",
  hu: "フ",
  ye: "イェ",
};
const vowels = "aiueo";
const macrons: Readonly<Record<string, string>> = {
  ā: "a:",
  ī: "i:",
  ū: "u:",
  ē: "e:",
  ō: "o:",
  â: "a:",
  î: "i:",
  û: "u:",
  ê: "e:",
  ô: "o:",
};

const syllables = makeSyllables();

function makeSyllables(): Map<string, string> {
  const table = new Map<string, string>();
  for (const [onset, kana] of Object.entries(rows))
    for (let index = 0; index < 5; index++)
      if (kana[index] !== " " && kana[index] !== undefined) table.set(onset + vowels[index], kana[index]!);
  for (const [onset, kana] of Object.entries(glides))
    for (const [vowel, small] of [
      ["a", "ャ"],
      ["u", "ュ"],
      ["o", "ョ"],
      ["e", "ェ"],
    ] as const)
      table.set(onset + vowel, kana + (onset.startsWith("t") && vowel === "e" ? "ィェ" : small));
  for (const [onset, list] of Object.entries(loans))
    for (const [index, kana] of list.entries()) table.set(onset + vowels[index], kana);
  for (const onset of ["sh", "ch", "j"]) table.set(`${onset}i`, glides[onset]!);
  for (const [syllable, kana] of Object.entries(single)) table.set(syllable, kana);
  return table;
}

/**
 * A romanised reading in katakana, or null when any of it is not Japanese romanisation. Understood are single phones
 * separated by spaces (`k o N d o m o`, long `o:`, geminate `q` or `cl`) and words (`kondomo`, long `ō`, doubled
 * consonants); between words a space is kept, between phones none. Punctuation becomes `、`.
 */
export function romanReading(text: string): string | null {
  const tokens = text.trim().split(/\s+/);
  const byPhone =
    tokens.filter((token) => /^([a-zN]{1,2}:?|[.,!?]+)$/.test(token)).length > 0.9 * tokens.length;
  const joined = byPhone ? tokens.join("").replaceAll("cl", "q") : tokens.join(" ");
  const roman = joined
    .replace(/[āīūēōâîûêô]/g, (letter) => macrons[letter]!)
    .replaceAll("N", "n'")
    .toLowerCase();
  let kana = "";
  let at = 0;
  while (at < roman.length) {
    const { taken, written } = readOne(roman, at);
    if (taken === 0) return null;
    kana += written;
    at += taken;
  }
  return kana.replace(/^[、 ]+|[、 ]+$/g, "") || null;
}

function readOne(roman: string, at: number): { taken: number; written: string } {
  const punctuation = /^\s*[.,!?;…]+\s*/.exec(roman.slice(at, at + 8));
  if (punctuation !== null) return { taken: punctuation[0].length, written: "、" };
  for (const length of [3, 2, 1]) {
    const kana = syllables.get(roman.slice(at, at + length));
    if (kana !== undefined && at + length <= roman.length) return { taken: length, written: kana };
  }
  const letter = roman[at]!;
  const next = roman[at + 1] ?? "";
  if (letter === " ") return { taken: 1, written: " " };
  if (letter === ":" || letter === "-") return { taken: 1, written: "ー" };
  if (letter === "q") return { taken: 1, written: "ッ" };
  if (letter === "n") return { taken: next === "'" ? 2 : 1, written: "ン" };
  if (letter === "m" && /[bpm]/.test(next)) return { taken: 1, written: "ン" };
  if (letter === "t" && roman.startsWith("ch", at + 1)) return { taken: 1, written: "ッ" };
  return letter === next && /[kgsztdhbpfcjr]/.test(letter)
    ? { taken: 1, written: "ッ" }
    : { taken: 0, written: "" };
}
