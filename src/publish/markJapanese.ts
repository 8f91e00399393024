import { type Html, html } from "./html.ts";

const japanese = /([\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Han}ー、。]+)/u;

/** Text with its Japanese parts marked as Japanese, so that they are read aloud and set as such. */
export function markJapanese(text: string): Html {
  return html`${text.split(japanese).map((part, i) => (i % 2 === 1 ? html`<span lang="ja">${part}</span>` : part))}`;
}
