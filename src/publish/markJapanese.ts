import { interfaceLanguage } from "../interface/interfaceText.ts";
import { type Html, html } from "./html.ts";

const japanese = /([\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Han}ー、。]+)/u;

/**
 * Text with the parts marked that are in another language than the page, so that they are read aloud and set as such:
 * Japanese words on an English page, whole English sentences on a Japanese one.
 */
export function markJapanese(text: string): Html {
  if (interfaceLanguage() === "ja")
    return isEnglish(text) ? html`<span lang="en">${text}</span>` : html`${text}`;
  return html`${text.split(japanese).map((part, i) => (i % 2 === 1 ? html`<span lang="ja">${part}</span>` : part))}`;
}

function isEnglish(text: string): boolean {
  const latin = text.match(/[A-Za-z]/g)?.length ?? 0;
  const kana = text.match(/[\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Han}]/gu)?.length ?? 0;
  return latin > 2 * kana;
}
