import { interfaceText } from "../interface/interfaceText.ts";
import { type Html, html } from "./html.ts";
import { markJapanese } from "./markJapanese.ts";
import { pageHeadings } from "./pageHeadings.ts";

/** Titles and opening lines of pages whose templates leave them open, as `FILE-title` and `FILE-lead`. */
export function pageWords(): Record<string, Html> {
  const { timing, vowelSpace, colouring, whatMatters, listen, words, lookUp, cite } = interfaceText();
  const pages = {
    ...{ timing, "vowel-space": vowelSpace, colouring, "what-matters": whatMatters },
    ...{ listen, words, "look-up": lookUp, cite },
  };
  const { start, rules, method, datasets, dictionary, devoicing, length } = interfaceText();
  const prose = { start, rules, method, datasets, dictionary, devoicing, length };
  return Object.fromEntries([
    ...Object.entries(prose).flatMap(([page, texts]) =>
      Object.entries(texts).flatMap(([name, text]: [string, unknown]) =>
        typeof text !== "string"
          ? []
          : [
              [
                `${page}-${name}`,
                name === "lead" ? html`<p class="lead">${markJapanese(text)}</p>` : markJapanese(text),
              ],
            ],
      ),
    ),
    ...Object.entries(pages).flatMap(([file, { title, lead }]) => [
      [`${file}-title`, html`${title}`],
      [`${file}-lead`, html`<p class="lead">${markJapanese(lead)}</p>`],
    ]),
    ...Object.entries(pageHeadings()).map(([name, text]) => [name, html`${text}`]),
  ]);
}
