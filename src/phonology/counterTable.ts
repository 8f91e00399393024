/**
 * What is particular to one counter; everything else follows from its first sound (see `readCounted`).
 * Common practice, no published source; checked against Open JTalk.
 */
export interface CounterRule {
  /** Reading of the counter itself, where the dictionary gives another or `whole` replaces it. */
  readonly kana?: string;
  /** Reading of whole numbers with the counter, first the usual one. */
  readonly whole?: Readonly<Record<number, readonly string[]>>;
  /** Last digit of the number before the counter, where it is not the usual name. */
  readonly digit?: Readonly<Record<number, readonly string[]>>;
  /** First kana of the counter after サン, セン, マン and ナン, and after ヨン. */
  readonly afterN?: string;
  readonly afterYon?: string;
  /** First kana after digits that would double it, where nothing doubles: 羽 is ワ after イチ and ロク. */
  readonly neverDoubles?: boolean;
}

const days = {
  1: ["イチニチ", "ツイタチ"],
  2: ["フツカ"],
  3: ["ミッカ"],
  4: ["ヨッカ"],
  5: ["イツカ"],
  6: ["ムイカ"],
  7: ["ナノカ"],
  8: ["ヨーカ"],
  9: ["ココノカ"],
  10: ["トオカ"],
  14: ["ジューヨッカ"],
  20: ["ハツカ"],
  24: ["ニジューヨッカ"],
} as const;
/** Counters of the native series, which count ヒト and フタ and go on with サン. */
const native = (kana: string): CounterRule => ({
  kana,
  whole: { 1: [`ヒト${kana}`], 2: [`フタ${kana}`] },
});
const hours = { digit: { 0: ["レー"], 4: ["ヨ"], 7: ["シチ", "ナナ"], 9: ["ク"] } } as const;
const years = { digit: { 4: ["ヨ"], 7: ["ナナ", "シチ"], 9: ["キュー", "ク"] } } as const;

/** Keyed by the first characters of the counter as written; the longest key that fits is used. */
export const counterTable: Readonly<Record<string, CounterRule>> = {
  人: {
    kana: "ニン",
    whole: { 1: ["ヒトリ"], 2: ["フタリ"] },
    digit: { 4: ["ヨ"], 7: ["シチ", "ナナ"], 9: ["キュー", "ク"] },
  },
  人前: { digit: { 4: ["ヨ"] } },
  つ: {
    kana: "ツ",
    whole: {
      1: ["ヒトツ"],
      2: ["フタツ"],
      3: ["ミッツ"],
      4: ["ヨッツ"],
      5: ["イツツ"],
      6: ["ムッツ"],
      7: ["ナナツ"],
      8: ["ヤッツ"],
      9: ["ココノツ"],
    },
  },
  日: { kana: "ニチ", whole: days, digit: { 7: ["シチ", "ナナ"], 9: ["ク", "キュー"] } },
  月: { kana: "ガツ", digit: { 4: ["シ"], 7: ["シチ"], 9: ["ク"] } },
  時: hours,
  時間: { digit: { 4: ["ヨ"], 7: ["シチ", "ナナ"], 9: ["ク"] } },
  年: years,
  円: { digit: { 4: ["ヨ", "ヨン"] } },
  畳: { digit: { 4: ["ヨ"] } },
  歳: { kana: "サイ", whole: { 20: ["ハタチ", "ニジュッサイ"] } },
  才: { kana: "サイ", whole: { 20: ["ハタチ", "ニジュッサイ"] } },
  晩: native("バン"),
  組: { kana: "クミ", whole: { 1: ["ヒトクミ", "イチクミ"], 2: ["フタクミ", "ニクミ"] }, neverDoubles: true },
  桁: native("ケタ"),
  皿: native("サラ"),
  束: native("タバ"),
  箱: native("ハコ"),
  粒: native("ツブ"),
  袋: native("フクロ"),
  部屋: native("ヘヤ"),
  切れ: native("キレ"),
  口: native("クチ"),
  声: native("コエ"),
  言: native("コト"),
  株: native("カブ"),
  房: native("フサ"),
  匙: native("サジ"),
  筋: native("スジ"),
  分: { afterN: "プ", afterYon: "プ" },
  分の: { kana: "ブンノ", neverDoubles: true },
  発: { afterN: "パ", afterYon: "パ" },
  泊: { afterN: "パ", afterYon: "パ" },
  拍: { afterN: "パ", afterYon: "パ" },
  歩: { afterN: "ポ", afterYon: "ホ" },
  版: { afterN: "パ", afterYon: "ハ" },
  敗: { afterN: "パ", afterYon: "ハ" },
  品: { afterN: "ピ", afterYon: "ヒ" },
  遍: { afterN: "ベ", afterYon: "ヘ" },
  階: { afterN: "ガ" },
  軒: { afterN: "ゲ" },
  足: { kana: "ソク", afterN: "ゾ" },
  羽: {
    kana: "ワ",
    whole: { 3: ["サンワ", "サンバ"], 10: ["ジューワ", "ジッパ", "ジュッパ"] },
    afterN: "バ",
  },
  点: { digit: { 0: ["レー"] } },
  度: { digit: { 0: ["レー"] } },
};

/** The rule of a counter as written and the part of it that the rule is about; null where nothing is particular. */
export function counterRule(counter: string): { readonly key: string; readonly rule: CounterRule } | null {
  for (let length = counter.length; length > 0; length--) {
    const key = counter.slice(0, length);
    if (Object.hasOwn(counterTable, key)) return { key, rule: counterTable[key]! };
  }
  return null;
}
