const kana = /^[\u3041-\u3096\u30a1-\u30fa\u30fcー]$/;
const pauseMark = /[、。，．,.!?！？…‥「」『』（）()・:：;；\s]+/g;

/** Hiragana as katakana; everything else unchanged. */
export function toKatakana(text: string): string {
  return text.replace(/[\u3041-\u3096]/g, (letter) => String.fromCharCode(letter.charCodeAt(0) + 0x60));
}

/**
 * A kana text as a reading: katakana, with `、` at punctuation and a space where the text has one; null when anything
 * but kana and punctuation is in it, or nothing is.
 */
export function kanaReading(text: string): string | null {
  const katakana = toKatakana(text.normalize("NFC").trim());
  const reading = katakana
    .replace(pauseMark, (mark) => (mark.trim() === "" ? " " : "、"))
    .replace(/^[、 ]+|[、 ]+$/g, "");
  if (reading === "") return null;
  for (const letter of reading) if (letter !== "、" && letter !== " " && !kana.test(letter)) return null;
  return reading;
}

/** A reading with accent marks as a plain one: `^ミ[ズヲ#マ[レ]ーシア_ナ?$` is `ミズヲ マレーシア、ナ`. */
export function withoutAccent(marked: string): string {
  return marked
    .replace(/[\^$?[\]]/g, "")
    .replaceAll("_", "、")
    .replaceAll("#", " ")
    .trim();
}
