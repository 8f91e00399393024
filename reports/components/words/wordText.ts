import type { OpenWord } from "../../../src/findings/words/openListing.ts";
import { geminateUnit, kanaOfSound, longUnit } from "../../../src/findings/words/sound.ts";
import type { Target } from "../../../src/findings/words/targets.ts";
import { interfaceText } from "../../../src/interface/interfaceText.ts";
import { element } from "../element.ts";

/** Kana of a word, one span a mora, the mora in question marked. */
export function kanaSpans(
  { sound }: Pick<OpenWord, "sound">,
  focus: number | null,
  target: Target,
): HTMLElement {
  const kind =
    target === "vowel-length" || target === "gemination" || target === "triplet" ? "length" : "vowel";
  const units = [...sound].map((unit, mora) => {
    const marked = mora === focus && (kind === "vowel" || unit === longUnit || unit === geminateUnit);
    return element("span", { class: marked ? `mora focus ${kind}` : "mora" }, kanaOfSound(unit));
  });
  return element("span", { class: "kana", lang: "ja" }, ...units);
}

/** A word with its spelling, romanisation, IPA, and what is known of it. */
export function wordBlock(
  word: OpenWord,
  focus: number | null,
  target: Target,
  heard: readonly (HTMLElement | null)[],
): HTMLElement {
  const text = interfaceText().words;
  const { surface, kana, romaji, ipa, gloss, level, accents, homophones } = word;
  const marked = target === "moraic-nasal" && word.sound[focus ?? -1] !== "ン" ? null : focus;
  return element(
    "div",
    { class: "word" },
    kanaSpans(word, marked, target),
    surface === kana ? null : element("span", { class: "surface", lang: "ja" }, surface),
    element(
      "span",
      { class: "sounds" },
      element("span", {}, romaji),
      " ",
      element("span", { class: "ipa" }, `[${ipa}]`),
    ),
    gloss === null ? null : element("span", { class: "gloss" }, gloss),
    level === null ? null : element("span", { class: "level" }, level),
    accents === null ? null : element("span", { class: "level" }, text.accentOf(accents)),
    homophones.length === 0
      ? null
      : element("span", { class: "homophones", lang: "ja" }, homophones.slice(0, 3).join("・")),
    heard.some((button) => button !== null) ? element("span", { class: "hearing" }, ...heard) : null,
  );
}
