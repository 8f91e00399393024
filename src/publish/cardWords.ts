import { firstLanguage, interfaceLanguage } from "../interface/interfaceText.ts";
import { retold } from "../interface/retold.ts";
import { type Html, html } from "./html.ts";

/** What a card says in its own words, in the language of the page where that is known, else marked as English. */
export function cardWords(text: string): Html {
  const told = retold(text);
  return told === text && interfaceLanguage() !== firstLanguage.tag
    ? html`<span lang="en">${text}</span>`
    : html`${told}`;
}
