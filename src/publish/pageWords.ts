import { interfaceText } from "../interface/interfaceText.ts";
import { type Html, html } from "./html.ts";
import { markJapanese } from "./markJapanese.ts";

/** Titles and opening lines of pages whose templates leave them open, as `FILE-title` and `FILE-lead`. */
export function pageWords(): Record<string, Html> {
  const { timing, vowelSpace, colouring, whatMatters } = interfaceText();
  const pages = { timing, "vowel-space": vowelSpace, colouring, "what-matters": whatMatters };
  const headings: Record<string, string> = {
    "timing-choices": timing.choices,
    "timing-growth": timing.growth.heading,
    "timing-twins": timing.twins.heading,
    "timing-rhythm": timing.rhythm.heading,
  };
  return Object.fromEntries([
    ...Object.entries(pages).flatMap(([file, { title, lead }]) => [
      [`${file}-title`, html`${title}`],
      [`${file}-lead`, html`<p class="lead">${markJapanese(lead)}</p>`],
    ]),
    ...Object.entries(headings).map(([name, text]) => [name, html`${text}`]),
  ]);
}
