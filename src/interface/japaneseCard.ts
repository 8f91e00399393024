import type { CardLines } from "./english/examples.ts";

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

/** What a card says, in parts, from its English text; null where that is not known. */
function partsOf(alt: string) {
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
  return {
    place,
    word,
    marked: marked === undefined ? "" : `、印は${decisions[marked]}`,
    decision:
      decision === undefined
        ? ""
        : `${decisions[decision]}${chance}${byLabel === undefined ? "" : " (ラベルによる)"}`,
    length: `${atMost === undefined ? "" : "最大"} ${ms} ms`,
    error: error === undefined ? "" : ` (音だけからは ±${error} ms)`,
    edges: `境界は${bases[edges ?? ""]}${voice === undefined ? "" : `、声は${bases[voice]}`}`,
    stretch: whole === undefined ? null : { whole, voicedMs, between: stretchInJapanese(stretch ?? "") },
    spoken,
  };
}

/** `C1’s release to C2’s onset` and the like; other words as they are. */
export function stretchInJapanese(stretch: string): string {
  if (stretch === "consonant") return "子音";
  if (stretch === "closure and release") return "閉鎖と開放";
  const parts = stretch
    .split(/ to | into /)
    .map((end) => (end === "the pause" ? "ポーズ" : (ends[end] ?? end)));
  return parts.join("から");
}

/** The picture of a sound for those who cannot see it, from its English text; null where that is not known. */
export function cardInJapanese(alt: string): string | null {
  const parts = partsOf(alt);
  if (parts === null) return null;
  const { place, word, marked, decision, length, error, edges, stretch, spoken } = parts;
  return [
    `${place}${word === undefined ? "" : `、「${word}」`}${marked}。`,
    decision === "" ? "" : `${decision}。`,
    `長さ${length.startsWith("最大") ? "は" : ""}${length}${error}。${edges}。`,
    stretch === null
      ? ""
      : `${stretch.between}までの ${stretch.whole} ms のうち、約 ${stretch.voicedMs} ms に母音の声があります。`,
    `前後の発音: ${spoken}。`,
  ].join("");
}

/** The lines that stand in the picture. */
export function cardLinesInJapanese(alt: string): CardLines | null {
  const parts = partsOf(alt);
  if (parts === null) return null;
  const { place, marked, decision, length, edges } = parts;
  return { decision, place: `${place}${marked}`, times: `${length.trim()}、${edges}` };
}
