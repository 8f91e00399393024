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

const cardPattern = new RegExp(
  [
    "^(long |doubled )?(\\S+(?: \\([^)]*\\))?) between (.+?) and (.+?)(?:, marked (devoiced|voiced))?(?:, in (.+?))?: ",
    "(?:(devoiced|voiced|voicing unknown)(?:, ((?:over )?\\d+)\\s%; (clear|fairly clear|near the boundary)|(, by the label))?(?:: ([^;]+))?; )?",
    "(at most )?(\\d+)\\sms(?: \\(sound alone: ±(\\d+)\\sms\\))?; edges (\\w+)(?:, voice (\\w+))?\\.",
    "(?: Of the (\\d+)\\sms from (.+?) about (\\d+)\\sms carry the vowel's voice\\.)? Spoken around it: (.*)\\.$",
  ].join(""),
  "su",
);
const neighbours: Readonly<Record<string, string>> = { "a pause": "ポーズ", "a doubled consonant": "促音" };
const margins: Readonly<Record<string, string>> = {
  clear: "明らか",
  "fairly clear": "かなり明らか",
  "near the boundary": "境界に近い",
};
const decisions: Readonly<Record<string, string>> = {
  devoiced: "無声化",
  voiced: "有声",
  "voicing unknown": "有声か無声か不明",
};
const bases: Readonly<Record<string, string>> = {
  measured: "測定",
  annotated: "注釈",
  aligned: "自動整列",
  predicted: "予測",
};
const ends: Readonly<Record<string, string>> = {
  "C1’s release": "前の子音の開放",
  "its start": "母音の始まり",
  "C2’s onset": "次の子音の始まり",
  "its end": "母音の終わり",
};

/** The picture of a sound for those who cannot see it, from its English text; null where that is not known. */
export function cardInJapanese(alt: string): string | null {
  const found = cardPattern.exec(alt);
  if (found === null) return null;
  const [, length, sound, before, after, marked, word, decision, sure, margin, byLabel, , ...more] = found;
  const [atMost, ms, error, edges, voice, whole, stretch, voicedMs, spoken] = more;
  const side = (text: string | undefined) => neighbours[text ?? ""] ?? text;
  const place = `${side(before)} と ${side(after)} の間の${length === undefined ? "" : length === "long " ? "長い" : "促音の"} ${sound}`;
  const chance =
    sure === undefined
      ? ""
      : ` ${sure.replace("over ", "")}%${sure.startsWith("over") ? "超" : ""}、${margins[margin ?? ""]}`;
  const said =
    decision === undefined
      ? ""
      : `${decisions[decision]}${chance}${byLabel === undefined ? "" : " (ラベルによる)"}。`;
  const between =
    stretch === undefined
      ? ""
      : stretch
          .split(/ to | into /)
          .map((end) => (end === "the pause" ? "ポーズ" : (ends[end] ?? end)))
          .join("から");
  return [
    `${place}${word === undefined ? "" : `、「${word}」`}${marked === undefined ? "" : `、印は${decisions[marked]}`}。`,
    said,
    `長さ${atMost === undefined ? "" : "は最大"} ${ms} ms${error === undefined ? "" : ` (音だけからは ±${error} ms)`}。境界は${bases[edges ?? ""]}${voice === undefined ? "" : `、声は${bases[voice]}`}。`,
    whole === undefined
      ? ""
      : `${between}までの ${whole} ms のうち、約 ${voicedMs} ms に母音の声があります。`,
    `前後の発音: ${spoken}。`,
  ].join("");
}

/** Everything that results keep in English and the pages can tell: messages, and what the shipped rules say. */
export const retellings: readonly Retelling[] = [
  ...Object.entries(ruleTexts).map(([english, told]) => exact(english, told)),
  ...japaneseMessages,
];

function exact(english: string, told: string): Retelling {
  return retellingOf(new RegExp(english.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")), () => told);
}
