import { interfaceText } from "../interface/interfaceText.ts";
import { toIpa } from "../phonology/ipa.ts";
import { isPhone } from "../phonology/phones.ts";

/** A kana that starts with the sound, for readers who do not read IPA. */
const kana: Readonly<Record<string, string>> = {
  a: "ア",
  i: "イ",
  u: "ウ",
  e: "エ",
  o: "オ",
  k: "カ",
  ky: "キャ",
  g: "ガ",
  gy: "ギャ",
  s: "サ",
  sh: "シ",
  z: "ザ",
  j: "ジ",
  t: "タ",
  ty: "ティ",
  ch: "チ",
  ts: "ツ",
  d: "ダ",
  dy: "ディ",
  n: "ナ",
  ny: "ニャ",
  h: "ハ",
  hy: "ヒャ",
  f: "フ",
  b: "バ",
  by: "ビャ",
  p: "パ",
  py: "ピャ",
  m: "マ",
  my: "ミャ",
  r: "ラ",
  ry: "リャ",
  y: "ヤ",
  w: "ワ",
  v: "ヴ",
  N: "ン",
  cl: "ッ",
};

/** IPA of a phone; a pause and ッ by their names. */
export function ipaOf(phone: string): string {
  if (phone === "pause") return interfaceText().format.pause;
  if (phone === "cl") return "ッ";
  return isPhone(phone) ? toIpa(phone) : phone;
}

/** A kana that starts with the sound; empty where there is none. */
export function kanaOf(phone: string): string {
  return kana[phone] ?? "";
}

/** IPA writes g with a letter of its own that looks the same. */
function looksLike(ipa: string, phone: string): boolean {
  return ipa.replace("ɡ", "g") === phone;
}

/** IPA with the romanised letter beside it where they differ: `i`, `ɯ (u)`, `ɕ (sh)`. */
export function soundName(phone: string): string {
  const ipa = ipaOf(phone);
  return looksLike(ipa, phone) || phone === "cl" || phone === "pause" ? ipa : `${ipa} (${phone})`;
}

/** As it stands in a list of sounds to choose from: `sh · ɕ · シ`. */
export function soundOption(phone: string): string {
  if (phone === "pause") return interfaceText().format.pause;
  if (phone === "cl") return interfaceText().format.firstOfDoubled;
  const ipa = ipaOf(phone);
  return [phone, looksLike(ipa, phone) ? "" : ipa, kanaOf(phone)].filter(Boolean).join(" · ");
}
