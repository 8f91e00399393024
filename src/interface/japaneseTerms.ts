const kinds: Readonly<Record<string, string>> = {
  stop: "破裂音",
  affricate: "破擦音",
  fricative: "摩擦音",
  nasal: "鼻音",
  liquid: "流音",
  approximant: "接近音",
  vowel: "母音",
  "sound of the h-row": "ハ行の子音",
  "doubled consonant": "促音",
  pause: "ポーズ",
};

const whole: Readonly<Record<string, string>> = {
  "long vowels": "長母音",
  "short vowels": "短母音",
  accented: "アクセント核あり",
  unaccented: "アクセント核なし",
  "first mora after a pause": "ポーズのあとの最初の拍",
  "later than the first mora": "最初より後の拍",
  devoiced: "無声化",
  voiced: "有声",
  "beside another devoiceable vowel": "隣にも無声化しうる母音",
  "no devoiceable vowel beside it": "隣に無声化しうる母音なし",
  "the vowel": "母音",
  "the length of the vowel": "母音の長さ",
  "the sound before": "前の音",
  "the sound after": "後の音",
  accent: "アクセント",
  "the place in the stretch": "区間での位置",
  devoicing: "無声化",
  "a devoiceable vowel beside it": "隣の無声化しうる母音",
  "speech rate": "話す速さ",
  "the word's frequency": "語の頻度",
  "the word": "語",
};

function sound(words: string): string {
  const [, voice = "", kind = words] = /^an? (voiceless |voiced )?(.+)$/u.exec(words) ?? [];
  return `${voice === "" ? "" : voice === "voiced " ? "有声" : "無声"}${kinds[kind] ?? kind}`;
}

/** A term of a model or its level, as the results say it in English: `followed by a pause`. */
export function termInJapanese(words: string): string {
  const plain = words.replace(/^[“"]|[”"]$/gu, "");
  const lower = plain.charAt(0).toLowerCase() + plain.slice(1);
  if (lower.includes(" × ")) return lower.split(" × ").map(termInJapanese).join(" × ");
  const [, side, what] = /^(preceded|followed) by (.+)$/u.exec(lower) ?? [];
  if (what !== undefined) return `${side === "preceded" ? "前" : "後"}の音が${sound(what)}`;
  return whole[lower] ?? plain;
}

/** Several of them, as a list puts them. */
export function termsInJapanese(list: string): string {
  return list
    .split(/”, “|, /u)
    .map((one) => `「${termInJapanese(one)}」`)
    .join("、");
}

export const basesInJapanese: Readonly<Record<string, string>> = {
  annotated: "注釈",
  measured: "測定",
  aligned: "自動整列",
  predicted: "予測",
};

/** What observations belong together by. */
export const unitsInJapanese: Readonly<Record<string, string>> = {
  speaker: "話者",
  word: "語",
  "sound frame": "音の並び",
  item: "項目",
};
