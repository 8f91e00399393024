import { interfaceText } from "../interface/interfaceText.ts";
import { type Html, html } from "./html.ts";
import type { Run } from "./readResults.ts";
import { withCode } from "./withCode.ts";

/** What readers corrected in these results, and what may not be read from it. */
export function correctionsHtml({ corrections }: Pick<Run, "corrections">): Html {
  const words = interfaceText().listen.corrections;
  if (corrections == null) return html`<p>${withCode(words.none)}</p>`;
  const { marks, used, devoiced, voiced, cannotTell } = corrections;
  return html`<p>${words.used(marks, used, devoiced, voiced, cannotTell)}</p><p>${words.apart}</p><p>${withCode(words.noSample)}</p>`;
}
