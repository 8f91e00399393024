import { type Html, html } from "./html.ts";

/** Text with what stands in backquotes as code. */
export function withCode(text: string): readonly (Html | string)[] {
  return text.split("`").map((part, i) => (i % 2 === 0 ? part : html`<code>${part}</code>`));
}
