/** Families that hold IPA, and such that hold kana and kanji, on the usual systems; the last is whatever there is. */
export const latinFonts = "system-ui,'Noto Sans','DejaVu Sans','Liberation Sans',sans-serif";
export const kanaFonts =
  "'Hiragino Sans','Yu Gothic','Noto Sans CJK JP','Noto Sans JP','IPAPGothic','IPAGothic',sans-serif";

const wide = /[\u2e80-\u9fff\uff00-\uff60]/u;
const forbidden = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/gu;

/** Width of a text in units of its size, by rule of thumb: 1 for kana and kanji, 0.58 for all else. */
export function textWidth(text: string): number {
  return [...text].reduce((sum, character) => sum + (wide.test(character) ? 1 : 0.58), 0);
}

/** The text without what XML forbids, cut with `…` where it is wider than `width` at that size. */
export function fitText(text: string, width: number, size: number): string {
  const characters = [...text.replace(forbidden, "")];
  if (textWidth(characters.join("")) * size <= width) return characters.join("");
  while (characters.length > 0 && textWidth(`${characters.join("")}…`) * size > width) characters.pop();
  return `${characters.join("")}…`;
}
