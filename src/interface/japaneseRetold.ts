import type { Claimed } from "./english/verdicts.ts";
import { japaneseMessages } from "./japaneseMessages.ts";
import { ruleTexts } from "./japaneseRuleTexts.ts";
import { type Retelling, retellingOf } from "./retelling.ts";

/** What is counted, by its English noun. */
export const nouns: Readonly<Record<string, (n: string) => string>> = {
  speaker: (n) => `話者${n}名`,
  vowel: (n) => `母音${n}個`,
  "more vowel": (n) => `母音${n}個`,
  "long vowel": (n) => `長母音${n}個`,
  "doubled consonant": (n) => `促音${n}個`,
  case: (n) => `${n}例`,
  token: (n) => `${n}個`,
  sound: (n) => `${n}音`,
  environment: (n) => `${n}環境`,
  recording: (n) => `録音${n}件`,
  rule: (n) => `経験則${n}件`,
  "rule of thumb": (n) => `経験則${n}件`,
};

export const showsInJapanese: Readonly<Record<string, string>> = {
  devoiced: "無声化した",
  voiced: "有声の",
  long: "長い",
  doubled: "促音の",
};

/** How many of a list are not named. */
export const rest = (names: readonly string[], most: number) =>
  names.length > most ? `ほか${names.length - most}件` : "";

const bounds = { "at least": "少なくとも", "at most": "長くても" };
const whispered = { devoiced: "無声化した", voiced: "有声の" } as Readonly<Record<string, string>>;

/** What a verdict says of its rule's contrast. */
export function claimInJapanese({ contrast, value, size, negative, bound, sides, detail }: Claimed): string {
  const about = bound === null ? "" : bounds[bound];
  const which = detail?.replace(/^(F\d) of (.+)$/u, "$2 の$1").replace(" and ", "と");
  switch (contrast.kind) {
    case "rate":
      return `${contrast.of.called}の${value}が無声化しています`;
    case "rate-difference":
      return `${contrast.first.called}の${sides[0]}、${contrast.second.called}の${sides[1]}が無声化し、差は${value}です`;
    case "length-ratio":
      return contrast.of === "gemination"
        ? `促音は単独の子音の${about}${value}の長さです`
        : `長母音は短母音の${about}${value}の長さです`;
    case "duration-ratio":
      return `${contrast.first.called}は${contrast.second.called}の${about}${value}の長さです`;
    case "formant":
      return `/${contrast.vowel}/ の${contrast.formant === "f1Hz" ? "F1" : "F2"}は、基準 (低い声は${contrast.limits.lowerVoices} Hz、高い声は${contrast.limits.higherVoices} Hz) より${size}${negative ? "低い" : "高い"}ところにあります`;
    case "vowel-separation":
      return `最も近い組である ${which} の母音の${value}が、自分の種類の中心に近い側にあります (偶然なら半分)`;
    case "length-quality":
      return `長短の差が最も大きい ${which} のずれは${value}です`;
    case "mora-count":
      return `モーラ数は${contrast.of === "word" ? "語" : "ポーズ間の区間"}の長さの分散の${value}を説明します`;
    case "devoiced-mora":
      return `無声化した拍は、同じ拍の有声のものの${about}${value}の長さです`;
    case "colouring": {
      const of = whispered[contrast.vowels] ?? contrast.vowels;
      return `${which} の重心は、${of} /i/ の前と /u/ の前で ${value} 違います${contrast.consonants.length > 1 ? " (得られた差のうち最小のもの)" : ""}`;
    }
  }
}

/** Everything that results keep in English and the pages can tell: messages, and what the shipped rules say. */
export const retellings: readonly Retelling[] = [
  ...Object.entries(ruleTexts).map(([english, told]) => exact(english, told)),
  ...japaneseMessages,
];

function exact(english: string, told: string): Retelling {
  return retellingOf(new RegExp(english.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")), () => told);
}
